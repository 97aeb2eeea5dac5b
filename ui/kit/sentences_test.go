package kit_test

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/mass"
	"windlass/ui/kit"
)

func TestSentence(t *testing.T) {
	_, _, notMass := mass.Parse("12x", mass.KG)
	for _, c := range []struct {
		name string
		err  error
		want string
	}{
		{"no error, no sentence", nil, ""},
		{
			"a mend becomes a sentence of its own", notMass,
			`Could not read load "12x": not a mass, the unit is not kg or lb. Write one like 102.5 kg or 225 lb.`,
		},
		{"without a mend", errors.New("undo: nothing to take back"), "Could not undo: nothing to take back."},
		{"a plain clause", errors.New("the class is over"), "The class is over."},
		{
			"what is quoted stays whole", errors.New(`open "a: b; c": it is no roster`),
			`Could not open "a: b; c": it is no roster.`,
		},
		{
			"an escaped quote does not end the quotation", errors.New(`open "5\" plate: b": it is no roster`),
			`Could not open "5\" plate: b": it is no roster.`,
		},
		{"work that was cancelled", fmt.Errorf("import roster: %w", context.Canceled), "Stopped. Nothing was changed."},
		{
			"a folder that may not be written", &fs.PathError{Op: "open", Path: "/x", Err: fs.ErrPermission},
			"This account may not write there. Choose another folder, or ask whoever set up the computer.",
		},
		{"nothing but spaces", errors.New(" "), ""},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, kit.Sentence(c.err)) })
	}
}
