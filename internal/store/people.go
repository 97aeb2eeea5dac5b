package store

import "windlass/internal/gym"

var tracks = table[gym.Track]{name: "tracks", noun: "track", cells: func(t *gym.Track) []cell {
	return []cell{
		text("id", &t.ID),
		text("name", &t.Name),
		whole("position", &t.Position),
	}
}}

var athletes = table[gym.Athlete]{name: "athletes", noun: "athlete", valid: gym.Athlete.Valid, cells: func(a *gym.Athlete) []cell {
	return []cell{
		text("id", &a.ID),
		text("name", &a.Name),
		text("standard", &a.Standard),
		text("status", &a.Status),
		text("unit", &a.Unit),
		date("joined", &a.Joined),
		text("show", &a.Show),
		text("display", &a.Display),
		whole("free", &a.Free),
		whole("want", &a.Want),
		asJSON("hand", &a.Hand),
		date("back_on", &a.BackOn),
		text("notes", &a.Notes),
	}
}}

var moves = table[gym.TrackMove]{name: "moves", noun: "track move", cells: func(m *gym.TrackMove) []cell {
	return []cell{
		text("id", &m.ID),
		text("athlete", &m.Athlete),
		maybe("track", &m.Track),
		date("first_day", &m.From),
		instant("made", &m.Made),
	}
}}

var restrictions = table[gym.Restriction]{name: "restrictions", noun: "restriction", cells: func(r *gym.Restriction) []cell {
	return []cell{
		text("id", &r.ID),
		text("athlete", &r.Athlete),
		text("text", &r.Text),
		text("region", &r.Region),
		date("first_day", &r.From),
		date("last_day", &r.Until),
	}
}}
