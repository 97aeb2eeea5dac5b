package desk

import (
	"time"

	"windlass/internal/gym"
)

// Undo takes a void back by adding the row again under another name, because a log
// is only added to. For a reader the two are one, so a log that is read shows only
// the row that came last.

// latestOverrides leaves void rows out that stand again further down.
func latestOverrides(rows []gym.Override) []gym.Override {
	return latest(rows, func(o gym.Override) bool { return o.Void != nil }, func(o gym.Override) gym.Override {
		o.ID, o.Void, o.Made = "", nil, bare(o.Made)
		return o
	})
}

// latestBouts leaves void rows out that stand again further down.
func latestBouts(rows []gym.Bout) []gym.Bout {
	return latest(rows, func(b gym.Bout) bool { return b.Void != nil }, func(b gym.Bout) gym.Bout {
		b.ID, b.Void, b.Made = "", nil, bare(b.Made)
		return b
	})
}

// bare is an instant that equals every other writing of itself.
func bare(at time.Time) time.Time { return at.UTC().Round(0) }

func latest[T any, K comparable](rows []T, void func(T) bool, same func(T) K) []T {
	last := map[K]int{}
	for i, r := range rows {
		last[same(r)] = i
	}
	var kept []T
	for i, r := range rows {
		if !void(r) || last[same(r)] == i {
			kept = append(kept, r)
		}
	}
	return kept
}
