package desk

import (
	"fmt"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// TiersText writes the three loads of a movement for a load standard, where the
// day differs from the catalogue or not: "24/20/16". It is empty for a movement
// without a load.
func (d *Desk) TiersText(item gym.Item, standard gym.Standard) string {
	m, _ := d.Movement(item.Movement)
	t := tiersOf(item, m, standard)
	if t.Full == 0 {
		return ""
	}
	u := d.book.Settings.Unit
	return t.Full.Digits(u) + "/" + t.Mid.Digits(u) + "/" + t.Light.Digits(u)
}

// WithTiers returns an item with the three loads that a coach wrote for a load
// standard; an empty text gives it the catalogue's again.
func (d *Desk) WithTiers(item gym.Item, standard gym.Standard, text string) (gym.Item, error) {
	loads := map[gym.Standard]gym.TierLoads{}
	for s, t := range item.Loads {
		loads[s] = t
	}
	delete(loads, standard)
	if strings.TrimSpace(text) != "" {
		t, err := d.parseTiers(text)
		if err != nil {
			return item, err
		}
		if m, _ := d.Movement(item.Movement); m.Loads[standard] != t {
			loads[standard] = t
		}
	}
	item.Loads = loads
	if len(loads) == 0 {
		item.Loads = nil
	}
	return item, nil
}

func (d *Desk) parseTiers(text string) (gym.TierLoads, error) {
	parts := strings.Split(text, "/")
	bad := func(why string) error {
		return fmt.Errorf("read loads %q: %s; write full, mid and light as in 24/20/16", strings.TrimSpace(text), why)
	}
	if len(parts) != 3 {
		return gym.TierLoads{}, bad("there are not three")
	}
	var three [3]mass.Mass
	for i, p := range parts {
		m, _, err := mass.Parse(p, d.book.Settings.Unit)
		if err != nil || m == 0 {
			return gym.TierLoads{}, bad(fmt.Sprintf("%q is no load", strings.TrimSpace(p)))
		}
		three[i] = m
	}
	if three[0] < three[1] || three[1] < three[2] {
		return gym.TierLoads{}, bad("they do not go from heavy to light")
	}
	return gym.TierLoads{Full: three[0], Mid: three[1], Light: three[2]}, nil
}
