package gymroom

import "windlass/ui/kit"

// editor ties the lines of a form to one value of the desk: each reads the value
// as it is now, changes its own part of a copy, and has the copy kept.
type editor[T any] struct {
	form *entryForm
	now  func() T
	keep func(T) error
}

// change keeps the value as set leaves it.
func (e editor[T]) change(set func(*T) error) error {
	value := e.now()
	if err := set(&value); err != nil {
		return err
	}
	return e.keep(value)
}

// text is a line for a part of the value.
func (e editor[T]) text(label string, get func(T) string, set func(*T, string) error) *kept {
	return e.form.line(label, false, func() string { return get(e.now()) }, func(text string) error {
		return e.change(func(v *T) error { return set(v, text) })
	})
}

// plain is a line for a part of the value that is a text as it stands.
func (e editor[T]) plain(label string, part func(*T) *string) *kept {
	return e.text(label,
		func(v T) string { return *part(&v) },
		func(v *T, text string) error { *part(v) = text; return nil })
}

// word is a choice for a part of the value.
func (e editor[T]) word(label string, options []kit.Option, get func(T) string, set func(*T, string)) *entryChoice {
	return e.form.choice(label, options, func() string { return get(e.now()) }, func(key string) error {
		return e.change(func(v *T) error { set(v, key); return nil })
	})
}
