package main

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/sound"
	"windlass/internal/store"
)

func TestWallSizes(t *testing.T) {
	for _, row := range []struct {
		text          string
		width, height float32
		millimetres   float64
	}{
		{"1920x1080", 1920, 1080, 0},
		{"3840x2160", 3840, 2160, 0},
		{"1920x1080@65", 1920, 1080, 809.4}, // 65 in of 16:9 are 31.87 in high
		{"1920x1080@27", 1920, 1080, 336.2},
	} {
		o, err := parseOptions([]string{"-wall", "-db", "gym.windlass", "-size", row.text}, os.Stderr)
		require.NoError(t, err)
		size, millimetres := o.wallSize()
		assert.Equal(t, row.width, size.Width, row.text)
		assert.Equal(t, row.height, size.Height, row.text)
		assert.InDelta(t, row.millimetres, millimetres, 0.2, row.text)
	}
	for _, text := range []string{"big", "1920", "1920x", "0x1080", "100x100", "1920x1080@", "1920x1080@big"} {
		_, err := parseOptions([]string{"-wall", "-size", text}, os.Stderr)
		require.Error(t, err, text)
		assert.Contains(t, err.Error(), text)
	}
}

func TestWallGetsWhatItsDeskHas(t *testing.T) {
	desk, err := parseOptions([]string{"-db", "gym.windlass", "-light", "-pace", "1,2,60", "-size", "1920x1080@65"}, os.Stderr)
	require.NoError(t, err)
	wall, err := parseOptions(desk.wallArgs(), os.Stderr)
	require.NoError(t, err)
	assert.True(t, wall.wall)
	assert.Equal(t, desk.db, wall.db)
	assert.Equal(t, desk.light, wall.light)
	assert.Equal(t, "1920x1080@65", wall.size)
	assert.Equal(t, desk.pace.speed, wall.pace.speed)
	assert.True(t, desk.pace.start.Equal(wall.pace.start))
}

// A desk finds the wall of its file, also one that an earlier desk left behind;
// there is one wall of a file.
func TestDeskAndWallFindEachOther(t *testing.T) {
	db := filepath.Join(t.TempDir(), "gym.windlass")
	ask := func(request string) error { _, err := askWall(db, request); return err }
	require.ErrorIs(t, ask(askNext), errNoWall)
	mail, err := listenForDesk(db)
	require.NoError(t, err)
	asked := make(chan string, 2)
	go serve(mail, map[string]func() string{
		askNext:    func() string { asked <- askNext; return "" },
		askClose:   func() string { asked <- askClose; return "" },
		askReading: func() string { return "36 lifters at 8 m on this screen: 8 pages, 30 s a round." },
	})
	require.NoError(t, ask(askNext))
	assert.Equal(t, askNext, <-asked)
	require.NoError(t, newWallProcess(options{db: db}).close())
	assert.Equal(t, askClose, <-asked)
	reading, err := askWall(db, askReading)
	require.NoError(t, err)
	assert.Equal(t, "36 lifters at 8 m on this screen: 8 pages, 30 s a round.", reading)
	require.ErrorContains(t, ask("sing"), "does not answer")
	_, err = listenForDesk(db)
	require.ErrorContains(t, err, "has a wall already")
	require.NoError(t, mail.Close())
	require.ErrorIs(t, ask(askNext), errNoWall)
	require.NoError(t, newWallProcess(options{db: db}).close(), "nothing to close")
}

func TestWhatAKilledWallLeftIsTakenAway(t *testing.T) {
	db := filepath.Join(t.TempDir(), "gym.windlass")
	require.NoError(t, os.WriteFile(mailPath(db), nil, 0o600))
	mail, err := listenForDesk(db)
	require.NoError(t, err)
	require.NoError(t, mail.Close())
}

func gymFile(t *testing.T, path, name string) *store.File {
	t.Helper()
	file, err := store.Create(t.Context(), path)
	require.NoError(t, err)
	t.Cleanup(func() { _ = file.Close() }) // some tests close it themselves
	rename(t, file, name)
	return file
}

func rename(t *testing.T, file *store.File, name string) {
	t.Helper()
	s := gym.DefaultSettings()
	s.Name = name
	require.NoError(t, file.Write(t.Context(), gym.PutSettings{Settings: s}))
}

func TestFollowerSeesEveryChangeOnce(t *testing.T) {
	path := filepath.Join(t.TempDir(), "gym.windlass")
	file := gymFile(t, path, "First")
	f, err := follow(t.Context(), path)
	require.NoError(t, err)
	defer f.close()
	look := func() (string, bool) {
		book, changed, err := f.look(t.Context())
		require.NoError(t, err)
		return book.Settings.Name, changed
	}
	name, changed := look()
	assert.True(t, changed, "the first look")
	assert.Equal(t, "First", name)
	_, changed = look()
	assert.False(t, changed)
	rename(t, file, "Second")
	name, changed = look()
	assert.True(t, changed)
	assert.Equal(t, "Second", name)
}

// A copy that was put back is another file under the same name.
func TestFollowerSeesARestoredFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "gym.windlass")
	require.NoError(t, gymFile(t, path, "Before").Close())
	f, err := follow(t.Context(), path)
	require.NoError(t, err)
	defer f.close()
	_, _, err = f.look(t.Context())
	require.NoError(t, err)
	other := gymFile(t, filepath.Join(dir, "other.windlass"), "After")
	require.NoError(t, other.Close())
	require.NoError(t, os.Rename(filepath.Join(dir, "other.windlass"), path))
	book, changed, err := f.look(t.Context())
	require.NoError(t, err)
	assert.True(t, changed)
	assert.Equal(t, "After", book.Settings.Name)
}

func TestFollowWithoutAFile(t *testing.T) {
	_, err := follow(t.Context(), filepath.Join(t.TempDir(), "nowhere"))
	require.ErrorIs(t, err, os.ErrNotExist)
}

// tape is a speaker that remembers.
type tape chan []int16

func (t tape) Play(s []int16) error { t <- s; return nil }

func (t tape) Close() {}

func TestTheDeskIsHeard(t *testing.T) {
	path := filepath.Join(t.TempDir(), "gym.windlass")
	file := gymFile(t, path, "Hall")
	athlete := gym.Athlete{ID: "ada", Name: "Ada Lund", Standard: gym.StandardW, Status: gym.Active, Unit: mass.KG}
	lift := gym.Lift{Key: "back-squat", Name: "Back squat", Region: gym.Lower, Pattern: gym.Squat}
	class := gym.Class{
		ID: "class", On: 20_000, Name: "Evening", Stage: gym.Climbing,
		Climb:   gym.ClimbPlan{Name: "short", Ceiling: 102, HeavyLine: 90, Rungs: []gym.Rung{{At: 0, Until: 1, Percent: 90, Reps: 1, Zone: gym.TopZone}}},
		Lifters: []gym.Lifter{{Athlete: "ada", Lift: lift.Key, Reps: 1, Base: 100 * mass.Kilogram, Source: gym.Tested, Station: -1}},
	}
	result := func(id gym.ID, load mass.Mass) gym.AddResult {
		return gym.AddResult{Result: gym.Result{ID: id, Athlete: "ada", Lift: lift.Key, Reps: 1, Load: load, Unit: mass.KG, On: 20_000, Source: gym.Tested}}
	}
	require.NoError(t, file.Write(t.Context(), gym.PutLift{Lift: lift}, gym.PutAthlete{Athlete: athlete}, result("before", 100*mass.Kilogram), gym.PutClass{Class: class}))
	speaker := make(tape, 20)
	ctx, stop := context.WithCancel(t.Context())
	ended := make(chan error, 1)
	h := &hearing{options: options{db: path}, say: func(string) {}, engine: sound.New(func(string) (sound.Output, error) { return speaker, nil }, time.Now)}
	go func() { ended <- h.run(ctx) }()
	class.Clock = gym.Run{}.Start(time.Now())
	require.NoError(t, file.Write(t.Context(), gym.PutClass{Class: class}))
	heard := func() []int16 { return <-speaker }
	assert.Len(t, heard(), len(sound.Samples(sound.Start)))
	assert.Len(t, heard(), len(sound.Samples(sound.Finish)))
	class.Lifters[0].Result = "result"
	require.NoError(t, file.Write(t.Context(), result("result", 101*mass.Kilogram), gym.PutClass{Class: class}))
	assert.Len(t, heard(), len(sound.Samples(sound.Record)))
	stop()
	require.NoError(t, <-ended)
}

// The wall reaches its desk, also one that was killed before; without a desk it goes on.
func TestTheWallReachesItsDesk(t *testing.T) {
	db := filepath.Join(t.TempDir(), "gym.windlass")
	askDesk(db, askFront)
	require.NoError(t, os.WriteFile(deskPath(db), nil, 0o600))
	mail, err := listenForWall(db)
	require.NoError(t, err)
	asked := make(chan string, 1)
	go serve(mail, map[string]func() string{askFront: func() string { asked <- askFront; return "" }})
	askDesk(db, askFront)
	assert.Equal(t, askFront, <-asked)
	require.NoError(t, mail.Close())
	assert.NoFileExists(t, deskPath(db))
}

// A wall that was killed is told in words, not in what it wrote to the terminal before;
// one that gave up by itself says why.
func TestHowAWallEnded(t *testing.T) {
	ended := func(script string) error { return exec.Command("sh", "-c", script).Run() }
	killed := wallEnd(ended("kill -9 $$"), "Fyne error: no bus\n  At: driver_xdg.go:20\n")
	assert.NotContains(t, killed.Error(), "driver_xdg")
	assert.Contains(t, killed.Error(), "press Ctrl+W")
	gave := wallEnd(ended("exit 1"), "Fyne error\nshow the wall: gym.windlass has a wall already\n")
	assert.Contains(t, gave.Error(), "has a wall already; press Ctrl+W")
	assert.NotContains(t, gave.Error(), "Fyne")
}
