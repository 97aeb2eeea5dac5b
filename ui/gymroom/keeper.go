package gymroom

import "context"

// Keeper makes and restores copies of the gym's file. The program around the
// room has one, if it has a file; each method returns a sentence for the coach.
type Keeper interface {
	// Backup writes a checked copy to a path, which must not be there yet.
	Backup(ctx context.Context, to string) (string, error)
	// Restore puts a checked copy in the place of the gym's file, and keeps the
	// file that was there beside it. The program reads the gym anew afterwards.
	Restore(ctx context.Context, from string) (string, error)
	// Verify reads the whole file and says whether it is sound.
	Verify(ctx context.Context) (string, error)
}

// hosted is a host with a keeper; a host without one cannot make backups.
type hosted interface{ Keeper() Keeper }

// remembering is a keeper that knows when the last copy was made.
type remembering interface {
	// Last says when and where, or that there is none.
	Last() string
}

// keeper returns that of the host, or nil.
func (g *Gym) keeper() Keeper {
	if h, ok := g.host.(hosted); ok {
		return h.Keeper()
	}
	return nil
}
