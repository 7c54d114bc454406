package rulebook

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"trialfit/internal/schema"
)

// addLocals takes in the local packs: first the form of manifests that they
// extend, then the rules that read it.
func (b *Book) addLocals(locals []fs.FS, folders []string) error {
	var kinds []string
	extensions := map[string][]byte{}
	for i, local := range locals {
		section, err := b.announce(local, folders[i])
		if err != nil {
			return &PackError{folders[i], err}
		}
		pack := b.Packs[i+1]
		kinds = append(kinds, pack.EvidenceKinds...)
		if section != nil {
			extensions["x-"+pack.Name] = section
		}
	}
	var err error
	if len(extensions)+len(kinds) == 0 {
		b.Form, err = plainForm()
	} else {
		b.Form, err = schema.NewValidator(extensions, kinds...)
	}
	if err != nil {
		return err
	}
	for i, local := range locals {
		if err := b.addLocal(local, b.Packs[i+1]); err != nil {
			return &PackError{folders[i], err}
		}
	}
	for _, pack := range b.Packs[1:] {
		if err := b.checkRegions(pack); err != nil {
			return &PackError{pack.folder, err}
		}
	}
	return nil
}

// plainForm is the form of manifests that no pack extends, compiled once.
var plainForm = sync.OnceValues(func() (*schema.Validator, error) { return schema.NewValidator(nil) })

// announce reads a local pack's name, and returns its manifest extension, nil
// if it has none.
func (b *Book) announce(fsys fs.FS, folder string) ([]byte, error) {
	pack, err := readPack(fsys)
	if err != nil {
		return nil, err
	}
	if slices.ContainsFunc(b.Packs, func(p Pack) bool { return p.Name == pack.Name }) {
		return nil, fmt.Errorf("the name %q is taken by another pack", pack.Name)
	}
	for path := range b.limits {
		if strings.HasPrefix(path, "limits."+pack.Name+".") {
			return nil, fmt.Errorf("the name %q is taken by an area of shipped limits", pack.Name)
		}
	}
	pack.folder = folder
	b.Packs = append(b.Packs, pack)
	section, err := extension(fsys, "x-"+pack.Name)
	if err != nil {
		return nil, within("manifest.json", err)
	}
	if len(pack.EvidenceKinds) > 0 {
		if _, err := schema.NewValidator(nil, pack.EvidenceKinds...); err != nil {
			return nil, within("pack.yaml", err)
		}
	}
	return section, nil
}

// extension reads the schema of the section that a pack adds to manifests.
func extension(fsys fs.FS, key string) ([]byte, error) {
	data, err := fs.ReadFile(fsys, "manifest.json")
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	var object map[string]json.RawMessage
	err = json.Unmarshal(data, &object)
	var syntax *json.SyntaxError
	switch {
	case errors.As(err, &syntax):
		before := string(data[:max(syntax.Offset-1, 0)])
		line := strings.Count(before, "\n")
		return nil, &placed{line + 1, len(before) - strings.LastIndex(before, "\n"), "is not JSON: " + syntax.Error()}
	case err != nil || object == nil:
		return nil, errors.New("needs a JSON object: the schema of " + key)
	}
	form, err := schema.NewValidator(map[string][]byte{key: data})
	if err != nil {
		return nil, err
	}
	return data, checkSection(form.Shape().Field(key), key)
}

// checkSection refuses what the records that rules see could not tell apart.
func checkSection(s *schema.Shape, path string) error {
	if s.Type == schema.List && !slices.Contains(s.Required, "id") {
		return fmt.Errorf("%s: items of a list need an id: name it under required", path)
	}
	for _, f := range s.Fields {
		below := path + "." + f.Name
		if !word.MatchString(f.Name) || slices.Contains([]string{"missing", "none", schema.Joints.Name}, f.Name) {
			return fmt.Errorf("%s: a field is called by lower-case letters, digits and _, and not missing, none or joints", below)
		}
		if err := checkSection(f, below); err != nil {
			return err
		}
	}
	return nil
}

// addLocal takes in a local pack. Its rules are parsed, checked and placed
// below data.local.<pack>.
func (b *Book) addLocal(fsys fs.FS, pack Pack) error {
	first := len(b.sources)
	if err := b.collect(fsys, pack); err != nil {
		return err
	}
	if len(b.sources) == first && len(pack.EvidenceKinds) == 0 && !exists(fsys, "limits.yaml") && !exists(fsys, "manifest.json") {
		return errors.New("is empty: it holds no rules, limits, manifest extension or evidence kinds")
	}
	modules := map[string]*ast.Module{}
	for _, s := range b.sources[first:] {
		m, err := b.addRule(s, pack)
		if err != nil {
			return err
		}
		if err := b.checkSyntax(m); err != nil {
			return err
		}
		modules[s.name] = m
	}
	return b.tryCompile(modules)
}

// tryCompile compiles a pack's rules with the judge alone, so that a fault is
// found whatever region a build is in, and before anything is exported.
func (b *Book) tryCompile(modules map[string]*ast.Module) error {
	if len(modules) == 0 {
		return nil
	}
	for _, s := range b.sources {
		if !strings.HasPrefix(s.name, "policies/lib/") {
			continue
		}
		m, err := ast.ParseModuleWithOpts(s.name, string(s.data), ast.ParserOptions{Capabilities: capabilities()})
		if err != nil {
			return regoFault(err)
		}
		modules[s.name] = m
	}
	_, err := compile(modules)
	return err
}

func exists(fsys fs.FS, name string) bool {
	_, err := fs.Stat(fsys, name)
	return err == nil
}
