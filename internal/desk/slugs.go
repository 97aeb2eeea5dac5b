package desk

import (
	"fmt"
	"strings"
)

// slug makes a key of a name: small letters, digits and hyphens. It is empty for
// a name without a Latin letter or digit.
func slug(name string) string {
	var b strings.Builder
	for _, r := range strings.ToLower(name) {
		switch {
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9':
			b.WriteRune(r)
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-"):
			b.WriteByte('-')
		}
	}
	return strings.Trim(b.String(), "-")
}

// freeKey is the slug of a name, numbered where it is used already. A name that
// makes no slug has a number alone.
func freeKey(name string, used func(string) bool) string {
	base := slug(name)
	if base == "" {
		base = "own"
	}
	key := base
	for n := 2; used(key); n++ {
		key = fmt.Sprintf("%s-%d", base, n)
	}
	return key
}
