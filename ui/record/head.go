package record

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// head says who is shown, and changes track and tier in place.
type head struct {
	of      *Record
	content fyne.CanvasObject
	name    *kit.Text
	about   *kit.Text
	status  *kit.Chip
	warning *kit.Chip
	track   *kit.Button
	tier    *kit.Button
}

func newHead(r *Record) *head {
	h := &head{of: r, name: kit.NewTitle("").Shrinks(120), about: kit.NewCaption("").Shrinks(120)}
	h.status = kit.NewChip("", kit.Disc, look.Good)
	h.warning = kit.NewChip("", kit.Warning, look.Warn)
	h.track = kit.NewButton("", r.move).Tip("Move to another track from a day on (Ctrl+M)")
	h.tier = kit.NewButton("", r.decideForAll).Key("Ctrl+T").Tip("Decide the heaviest tier for every movement")
	h.content = kit.Column(look.Gap1,
		kit.Row(look.Gap2, kit.Fill(h.name), h.track, h.tier),
		kit.Row(look.Gap2, kit.Fill(h.about), h.warning, h.status))
	return h
}

func (h *head) show(a gym.Athlete) {
	d := h.of.host.Desk()
	row := d.RosterRow(a.ID)
	h.name.SetText(a.Name)
	standing, err := d.TierStanding(a.ID)
	if err != nil { // the conditioning tells why no load can be suggested
		standing = desk.TierStanding{}
	}
	h.about.SetText(about(row, standing))
	shape, tone := StatusMark(a.Status)
	h.status.Set(string(a.Status), shape, tone)
	n := len(d.Restrictions(a.ID, d.Today()))
	h.warning.Hidden = n == 0
	h.warning.Set(desk.Count(n, "restriction"), kit.Warning, look.Warn)
	h.track.SetLabel("Track: " + orNone(row.Track.Name))
	tier := usual(standing)
	if errors.Is(err, desk.ErrLearning) {
		tier = "…"
	}
	h.tier.SetLabel("Tier: " + tier)
	h.content.Refresh()
}

// about is the line under the name: what is not told elsewhere.
func about(row desk.RosterRow, s desk.TierStanding) string {
	var parts []string
	if beside := s.Beside(); beside != "" {
		parts = append(parts, beside)
	}
	if days := row.Days.String(); days != "" {
		parts = append(parts, days)
	}
	if row.Came != day.None {
		parts = append(parts, "last came "+row.Came.Short())
	}
	if row.Athlete.BackOn != day.None {
		parts = append(parts, "back since "+row.Athlete.BackOn.Short())
	}
	if len(parts) == 0 {
		return "Has not come to a class yet"
	}
	return strings.Join(parts, "  ·  ")
}

// usual names the usual tier.
func usual(s desk.TierStanding) string {
	if s.Usual == "" {
		return "none yet"
	}
	return desk.TierWord(s.Usual)
}

func orNone(name string) string {
	if name == "" {
		return "none"
	}
	return name
}

// StatusMark is the shape of a status.
func StatusMark(s gym.Status) (kit.Shape, look.Meaning) {
	switch s {
	case gym.Paused:
		return kit.Half, look.Warn
	case gym.Archived:
		return kit.Dash, look.Muted
	}
	return kit.Disc, look.Good
}
