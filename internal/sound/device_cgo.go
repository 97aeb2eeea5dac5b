//go:build cgo

package sound

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"sync/atomic"

	"github.com/gen2brain/malgo"
)

// speaker is a device of the machine.
type speaker struct {
	context *malgo.AllocatedContext
	device  *malgo.Device
	mixer   mixer
	lost    atomic.Bool
}

// Open starts a device of the machine by its name, or the usual one without a
// name. It may take long and belongs on a goroutine of its own.
func Open(name string) (Output, error) {
	context, err := newContext()
	if err != nil {
		return nil, err
	}
	s := &speaker{context: context}
	if err := s.start(name); err != nil {
		s.Close()
		return nil, err
	}
	return s, nil
}

// Devices lists the names of the machine's devices.
func Devices() ([]string, error) {
	context, err := newContext()
	if err != nil {
		return nil, err
	}
	defer release(context)
	found, err := context.Devices(malgo.Playback)
	if err != nil {
		return nil, fmt.Errorf("look for a speaker: %w", err)
	}
	var names []string
	for i := range found {
		names = append(names, found[i].Name())
	}
	return names, nil
}

// newContext takes the first sound system that works, but never the null device,
// which would swallow every cue without a word.
func newContext() (*malgo.AllocatedContext, error) {
	systems := []malgo.Backend{
		malgo.BackendWasapi, malgo.BackendDsound, malgo.BackendWinmm, malgo.BackendCoreaudio,
		malgo.BackendPulseaudio, malgo.BackendAlsa, malgo.BackendJack,
	}
	context, err := malgo.InitContext(systems, malgo.ContextConfig{}, func(string) {})
	if err != nil {
		return nil, errors.New("this machine has no sound system that works")
	}
	return context, nil
}

func release(context *malgo.AllocatedContext) {
	_ = context.Uninit() // it is given up either way
	context.Free()
}

func (s *speaker) start(name string) error {
	config := malgo.DefaultDeviceConfig(malgo.Playback)
	config.SampleRate, config.PeriodSizeInMilliseconds = Rate, 10
	config.Playback.Format, config.Playback.Channels = malgo.FormatS16, 1
	found, err := s.context.Devices(malgo.Playback)
	if err != nil || len(found) == 0 {
		return errors.New("this machine has no speaker")
	}
	if name != "" {
		at := slices.IndexFunc(found, func(d malgo.DeviceInfo) bool { return strings.EqualFold(d.Name(), name) })
		if at < 0 {
			return fmt.Errorf("the speaker %q is not connected", name)
		}
		config.Playback.DeviceID = found[at].ID.Pointer()
	}
	s.device, err = malgo.InitDevice(s.context.Context, config, malgo.DeviceCallbacks{
		Data: func(out, _ []byte, _ uint32) { s.mixer.fill(out) },
		Stop: func() { s.lost.Store(true) },
	})
	if err != nil {
		return fmt.Errorf("the speaker cannot be used (%w)", err)
	}
	if err := s.device.Start(); err != nil {
		return fmt.Errorf("the speaker cannot be used (%w)", err)
	}
	return nil
}

// Play implements Output.
func (s *speaker) Play(samples []int16) error {
	if s.lost.Load() {
		return errors.New("the speaker was disconnected")
	}
	s.mixer.add(samples)
	return nil
}

// Close implements Output.
func (s *speaker) Close() {
	if s.device != nil {
		s.device.Uninit()
	}
	release(s.context)
}
