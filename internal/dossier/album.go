package dossier

import (
	"fmt"
	"path"
	"runtime"
	"slices"
	"strings"
	"sync"

	"trialfit/internal/dossier/photo"
	"trialfit/internal/evidence"
	"trialfit/internal/manifest"
)

// album holds the pictures among the evidence, and why others are not shown.
type album struct {
	photos Photos
	faults []Text
}

// mostPixels is the longer side of a picture in a document.
const mostPixels = 600

var pictureNames = []string{".jpg", ".jpeg", ".png"}

// album scales the pictures among the evidence, side by side. What can't be
// shown is told and keeps nothing else from being shown.
func (a *author) album() album {
	items := a.items("evidence")
	type result struct {
		photo *Photo
		fault Text
	}
	results := make([]result, len(items))
	var wait sync.WaitGroup
	turns := make(chan struct{}, runtime.GOMAXPROCS(0))
	for i, e := range items {
		wait.Go(func() {
			turns <- struct{}{}
			defer func() { <-turns }()
			results[i].photo, results[i].fault = a.picture(e)
		})
	}
	wait.Wait()
	var out album
	for _, r := range results {
		if r.photo != nil {
			out.photos = append(out.photos, *r.photo)
		}
		if r.fault != nil {
			out.faults = append(out.faults, r.fault)
		}
	}
	return out
}

// picture is that of one item of evidence, or what is wrong with its file.
func (a *author) picture(e *manifest.Node) (*Photo, Text) {
	file := e.Word("file")
	if file == "" {
		return nil, nil
	}
	number := paperNumber(a.numbers[e.ID])
	fault := func(format, why string) Text {
		return link(number, "#"+number).and(say(strings.TrimPrefix(fmt.Sprintf(format, number, why), number)))
	}
	if why, refused := a.Report.Refused[e.ID]; refused {
		return nil, fault(photoRefused, why)
	}
	found := a.Report.Evidence[e.ID]
	if found.State != evidence.Intact {
		return nil, fault(photoRefused, states[found.State])
	}
	if found.Pointer || !slices.Contains(pictureNames, strings.ToLower(path.Ext(file))) {
		return nil, nil
	}
	f, err := evidence.Open(a.m.Dir, file)
	if err != nil {
		return nil, fault(photoRefused, err.Error())
	}
	defer f.Close()
	scaled, err := photo.Scale(f, mostPixels)
	if err != nil {
		return nil, fault(photoFailed, err.Error())
	}
	title := e.Word("title")
	if title == "" {
		title = spaced(e.ID)
	}
	return &Photo{
		JPEG: scaled.JPEG, Width: scaled.Width, Height: scaled.Height,
		Caption: link(number, "#"+number).and(say(" " + title)), Alt: say(title).String(),
	}, nil
}
