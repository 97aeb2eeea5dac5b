package kit

// Doubted is the question before something improbable is kept: why it is doubted, and
// whether to write it again, which is the usual answer, or to keep it.
func Doubted(title, doubt string, again, keep func()) Question {
	return Question{
		Title: title,
		Text:  doubt + " Is that what was lifted?",
		Actions: []Action{
			{Label: "Write it again", Do: func() bool { again(); return true }},
			{Label: "Log it as it is", Do: func() bool { keep(); return true }},
		},
		Width: 560,
	}
}
