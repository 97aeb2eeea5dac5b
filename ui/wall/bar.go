package wall

// bareText stands for the bar that is lifted without plates.
const bareText = "bar"

// barGap is between the mass of a bar and its plates, in shares of the text size.
const barGap = 0.3

// otherBar names the bar that those at a station share where it is of another mass than
// the one that stands there: its plates on the usual bar would be another load.
func (s State) otherBar(station int, key string) string {
	e := s.Book.Equipment
	bar, known := e.Bar(key)
	if !known || station < 0 || station >= len(e.Stations) {
		return ""
	}
	if usual, ok := e.Bar(e.Stations[station].Bar); ok && usual.Mass == bar.Mass {
		return ""
	}
	return bareText + " " + digits(bar.Mass, bar.Unit, s.Book.Settings.Unit)
}

// barWidth is what the name of an unusual bar takes before the plates.
func (r Row) barWidth() float32 {
	if r.Bar == "" || r.Bare {
		return 0
	}
	return share(r.Bar, true) + barGap
}

// bare is what stands for a bar without plates.
func (r Row) bare() string {
	if r.Bar != "" {
		return r.Bar
	}
	return bareText
}
