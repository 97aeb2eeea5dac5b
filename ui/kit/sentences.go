package kit

import (
	"context"
	"errors"
	"io/fs"
	"strings"
	"syscall"
	"unicode"
	"unicode/utf8"
)

// known are the sentences for causes that say too little by themselves.
var known = []struct {
	cause    error
	sentence string
}{
	{context.Canceled, "Stopped. Nothing was changed."},
	{context.DeadlineExceeded, "That took too long and was stopped. Nothing was changed. Try again."},
	{syscall.ENOSPC, "The disk is full, so nothing was saved. Make room and try again."},
	{fs.ErrPermission, "This account may not write there. Choose another folder, or ask whoever set up the computer."},
	{fs.ErrNotExist, "There is no file or folder of that name. Check how it is written, or choose it again."},
	{fs.ErrExist, "There is a file of that name already. Choose another name."},
}

// Sentence turns an error into what a coach reads: what did not happen, why, and
// what to do. It is the only place where an error becomes a sentence, and "" for
// no error.
//
// An error's text has the form
//
//	error = what ": " cause { ": " cause } [ "; " mend ]
//
// with lower case throughout; see the project's habits. "read load "12x": not a
// mass: it has no number; write one like 102.5 kg" becomes "Could not read load
// "12x": not a mass, it has no number. Write one like 102.5 kg."
func Sentence(err error) string {
	if err == nil {
		return ""
	}
	for _, p := range known {
		if errors.Is(err, p.cause) {
			return p.sentence
		}
	}
	// Only outside quotes do a colon and a semicolon part anything.
	happened, mend, _ := cut(err.Error(), "; ")
	what, cause, parted := cut(happened, ": ")
	if !parted {
		return ended(happened) + then(mend)
	}
	return ended("Could not "+what+": "+listed(cause)) + then(mend)
}

// listed joins a chain of causes with commas.
func listed(chain string) string {
	first, rest, more := cut(chain, ": ")
	if !more {
		return first
	}
	return first + ", " + listed(rest)
}

// cut is strings.Cut that leaves what stands in double quotes whole.
func cut(text, sep string) (before, after string, found bool) {
	quoted := false
	for i := 0; i < len(text); i++ {
		switch {
		case text[i] == '\\' && quoted:
			i++
		case text[i] == '"':
			quoted = !quoted
		case !quoted && strings.HasPrefix(text[i:], sep):
			return text[:i], text[i+len(sep):], true
		}
	}
	return text, "", false
}

func then(mend string) string {
	if mend == "" {
		return ""
	}
	return " " + ended(mend)
}

// ended makes a sentence of a clause: a capital in front, a full stop behind.
func ended(clause string) string {
	clause = strings.TrimSpace(clause)
	first, size := utf8.DecodeRuneInString(clause)
	if size == 0 {
		return ""
	}
	clause = string(unicode.ToUpper(first)) + clause[size:]
	if strings.ContainsAny(clause[len(clause)-1:], ".!?") {
		return clause
	}
	return clause + "."
}
