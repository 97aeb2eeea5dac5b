package cycle

import "windlass/internal/gym"

// Template is a built-in track, written by the project, ready to run and edit.
type Template struct {
	Key   string // a slug
	Name  string
	About string
	plan  skeleton
}

// Templates returns the built-in tracks.
func Templates() []Template {
	return []Template{powerlifting(), strongman(), weightlifting()}
}

// TemplateOf returns the built-in track with a key.
func TemplateOf(key string) (Template, bool) {
	for _, t := range Templates() {
		if t.Key == key {
			return t, true
		}
	}
	return Template{}, false
}

// Plan makes a track's plan for the weeks of a cycle, as [Weeks] lays them out,
// under a wave over the gym's rep counts. The plan names no track yet, and its
// keys are those of the built-in catalogue.
func (t Template) Plan(weeks []gym.WeekKind, wave gym.WaveKind, counts []int) (gym.TrackPlan, error) {
	return t.plan.fill(weeks, wave, counts)
}
