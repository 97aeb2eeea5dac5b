package arch

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"
)

const module = "windlass"

// unit is one package as its files say it.
type unit struct {
	folder   string
	imports  map[string]string // by path, the file that imports it
	comments int               // package comments
	calls    []string          // of the impure, and go statements, with their file
}

// survey reads every package of a tree, tests left out.
func survey(tree fs.FS) (map[string]*unit, error) {
	units := map[string]*unit{}
	err := fs.WalkDir(tree, ".", func(name string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && skipped(name):
			return fs.SkipDir
		case entry.IsDir() || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go"):
			return nil
		}
		folder := path.Dir(name)
		if units[folder] == nil {
			units[folder] = &unit{folder: folder, imports: map[string]string{}}
		}
		return units[folder].read(tree, name)
	})
	return units, err
}

// skipped folders hold no code of the house, as for the go command.
func skipped(name string) bool {
	base := path.Base(name)
	return base == "testdata" || name != "." && (strings.HasPrefix(base, ".") || strings.HasPrefix(base, "_"))
}

func (u *unit) read(tree fs.FS, name string) error {
	text, err := fs.ReadFile(tree, name)
	if err != nil {
		return err
	}
	file, err := parser.ParseFile(token.NewFileSet(), name, text, parser.ParseComments)
	if err != nil {
		return err
	}
	if file.Doc != nil {
		u.comments++
	}
	local := map[string]string{} // what the file calls its imports
	for _, spec := range file.Imports {
		imported, err := strconv.Unquote(spec.Path.Value)
		if err != nil {
			return err
		}
		u.imports[imported] = name
		local[calledAs(spec, imported)] = imported
	}
	ast.Inspect(file, func(n ast.Node) bool {
		u.note(n, local, name)
		return true
	})
	return nil
}

// calledAs is the name of an import in its file. "math/rand/v2" is called rand.
func calledAs(spec *ast.ImportSpec, imported string) string {
	if spec.Name != nil {
		return spec.Name.Name
	}
	base := path.Base(imported)
	if len(base) > 1 && base[0] == 'v' && strings.Trim(base[1:], "0123456789") == "" {
		base = path.Base(path.Dir(imported))
	}
	return base
}

func (u *unit) note(n ast.Node, local map[string]string, name string) {
	switch n := n.(type) {
	case *ast.GoStmt:
		u.calls = append(u.calls, name+" starts a goroutine")
	case *ast.SelectorExpr:
		x, ok := n.X.(*ast.Ident)
		if ok && slices.Contains(impure[local[x.Name]], n.Sel.Name) {
			u.calls = append(u.calls, fmt.Sprintf("%s uses %s.%s", name, local[x.Name], n.Sel.Name))
		}
	}
}

// judge names every breach of the policy in a tree, each with its mend.
func judge(units map[string]*unit) []string {
	var breaches []string
	for _, u := range units {
		breaches = append(breaches, u.judge()...)
	}
	slices.Sort(breaches)
	return breaches
}

func (u *unit) judge() []string {
	var breaches []string
	allowed, known := ours[u.folder]
	if !known {
		breaches = append(breaches, u.folder+" is not in the house; add it to the table of policy_test.go, with whom it may import")
	}
	if slices.Contains(nameless, path.Base(u.folder)) {
		breaches = append(breaches, u.folder+" says nothing about what is in it; name it for its idea")
	}
	if u.comments != 1 {
		breaches = append(breaches, fmt.Sprintf("%s has %d package comments; keep one", u.folder, u.comments))
	}
	for imported, file := range u.imports {
		if why := u.refuses(imported, allowed); why != "" {
			breaches = append(breaches, file+" "+why)
		}
	}
	if slices.Contains(pure, u.folder) {
		for _, call := range u.calls {
			breaches = append(breaches, call+"; hand it in instead")
		}
	}
	return breaches
}

func (u *unit) refuses(imported string, allowed []string) string {
	switch inside, isOurs := strings.CutPrefix(imported, module+"/"); {
	case isOurs:
		if !slices.Contains(allowed, inside) && !slices.Contains(allowed, everything) {
			return fmt.Sprintf("imports %s, which %s may not; move what it needs, or draw the table anew", inside, u.folder)
		}
	case !strings.Contains(strings.Split(imported, "/")[0], "."): // the standard library
		if slices.Contains(pure, u.folder) && slices.Contains(closed, imported) {
			return fmt.Sprintf("imports %s, but %s is pure; hand in what it needs", imported, u.folder)
		}
	case !u.mayUse(imported):
		return fmt.Sprintf("imports %s, which %s may not; only its owners do", imported, u.folder)
	}
	return ""
}

// mayUse looks up who owns what is not ours, by the longest line that fits.
func (u *unit) mayUse(imported string) bool {
	for at := imported; at != "."; at = path.Dir(at) {
		owners, listed := theirs[at]
		if !listed {
			continue
		}
		return slices.ContainsFunc(owners, func(owner string) bool {
			whole, all := strings.CutSuffix(owner, "/*")
			return owner == u.folder || all && strings.HasPrefix(u.folder, whole+"/")
		})
	}
	return false
}
