package gymroom_test

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/ui/gymroom"
	"windlass/ui/look"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

// clerk is a keeper that copies nothing but notes what it was asked.
type clerk struct{ restored string }

func (c *clerk) Backup(_ context.Context, to string) (string, error) {
	if err := os.WriteFile(to, []byte("a copy"), 0o600); err != nil {
		return "", err
	}
	return "The copy is written and sound.", nil
}

func (c *clerk) Restore(_ context.Context, from string) (string, error) {
	if _, err := os.Stat(from); err != nil {
		return "", err
	}
	c.restored = from
	return "The gym is as the copy has it.", nil
}

func (c *clerk) Verify(context.Context) (string, error) {
	return "", errors.New("check the file: a page of it cannot be read; restore a copy")
}

func (c *clerk) Last() string { return "The last backup was made yesterday." }

// keeping is a host with a keeper.
type keeping struct {
	room.Host
	clerk *clerk
}

func (k keeping) Keeper() gymroom.Keeper { return k.clerk }

func TestCopiesAreMadeCheckedAndRestored(t *testing.T) {
	d, _ := uitest.DemoDesk(t)
	c := &clerk{}
	h := uitest.Stage(t, d, look.Dark(), stage, func(h room.Host) room.Room { return gymroom.New(keeping{h, c}) })
	uitest.Tap(t, h.On, "Backups")
	uitest.See(t, h.On, "The last backup was made yesterday.", "Windlass backup 2026-05-18 0540.windlass")
	picture(t, h, "backups")
	path := filepath.Join(t.TempDir(), "copy.windlass")
	uitest.Fill(t, h.On, "File to write the copy to", path)
	uitest.Tap(t, h.On, "Back up now")
	require.FileExists(t, path)
	uitest.See(t, h.On, "The copy is written and sound.")
	uitest.Fill(t, h.On, "File to write the copy to", filepath.Join(t.TempDir(), "no such folder", "copy"))
	h.Press(t, "U")
	uitest.See(t, h.On, "Write a copy now?")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "There is no file or folder of that name.")
	h.Press(t, "V")
	assert.Equal(t, "Could not check the file: a page of it cannot be read. Restore a copy.", h.Said[len(h.Said)-1])

	h.Press(t, "R")
	uitest.See(t, h.On, "Write where the copy is")
	uitest.Fill(t, h.On, "Copy to restore", path)
	h.Press(t, "R")
	uitest.See(t, h.On, "Restore this copy?")
	uitest.Key(t, h.On, fyne.KeyEscape)
	assert.Empty(t, c.restored, "leaving the question changes nothing")
	h.Press(t, "R")
	uitest.Tap(t, h.On, "Restore it")
	assert.Equal(t, path, c.restored)
}

func TestAWindowWithoutAFileSaysSo(t *testing.T) {
	h := open(t, "Backups")
	uitest.See(t, h.On, "it cannot make backups")
	assert.NotContains(t, h.Room.Keys()[0].Does, "Back up")
}
