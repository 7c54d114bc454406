// Package photo makes small pictures of evidence: scaled, upright, and without
// anything a camera wrote beside the picture, its position above all.
package photo

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	_ "image/png" // decoder
	"io"

	"golang.org/x/image/draw"
)

// What is taken: a picture of so many pixels from a file of so many bytes. A
// small file may hold a picture that no memory would.
const (
	MaxPixels = 60_000_000
	MaxBytes  = 64 << 20
)

// quality is that of the JPEG written, out of 100.
const quality = 82

// Picture is a scaled picture; sides in pixels.
type Picture struct {
	JPEG          []byte
	Width, Height int
}

// Scale reads a JPEG or PNG and writes it as a JPEG whose longer side has at
// most so many pixels; smaller pictures keep their size. What is transparent
// turns white. The error says in a few words what the file is instead.
func Scale(r io.Reader, most int) (Picture, error) {
	data, err := io.ReadAll(io.LimitReader(r, MaxBytes+1))
	if err != nil {
		return Picture{}, fmt.Errorf("can't be read (%w)", err)
	}
	if len(data) > MaxBytes {
		return Picture{}, fmt.Errorf("the file is larger than %d MiB", MaxBytes>>20)
	}
	config, format, err := image.DecodeConfig(bytes.NewReader(data))
	switch {
	case errors.Is(err, image.ErrFormat):
		return Picture{}, errors.New("the file is neither a JPEG nor a PNG")
	case err != nil:
		return Picture{}, fmt.Errorf("the file is broken (%w)", err)
	case config.Width < 1 || config.Height < 1:
		return Picture{}, errors.New("the picture has no size")
	case config.Width > MaxPixels/config.Height:
		return Picture{}, fmt.Errorf("%d × %d pixels are more than %d million", config.Width, config.Height, MaxPixels/1_000_000)
	}
	full, _, err := image.Decode(bytes.NewReader(data))
	if err != nil {
		return Picture{}, fmt.Errorf("the file is broken (%w)", err)
	}
	turned := 1
	if format == "jpeg" {
		turned = orientation(data)
	}
	small := upright(scaled(full, most), turned)
	var out bytes.Buffer
	if err := jpeg.Encode(&out, small, &jpeg.Options{Quality: quality}); err != nil {
		return Picture{}, fmt.Errorf("can't be written as a JPEG (%w)", err)
	}
	return Picture{out.Bytes(), small.Bounds().Dx(), small.Bounds().Dy()}, nil
}

// scaled draws a picture on white, no side longer than most.
func scaled(full image.Image, most int) *image.RGBA {
	w, h := full.Bounds().Dx(), full.Bounds().Dy()
	if longer := max(w, h); longer > most {
		w, h = max(w*most/longer, 1), max(h*most/longer, 1)
	}
	small := image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(small, small.Bounds(), image.NewUniform(color.White), image.Point{}, draw.Src)
	draw.ApproxBiLinear.Scale(small, small.Bounds(), full, full.Bounds(), draw.Over, nil)
	return small
}

// upright turns a picture the way its camera was held: Exif orientation 1 to 8.
func upright(in *image.RGBA, turned int) *image.RGBA {
	if turned < 2 || turned > 8 {
		return in
	}
	w, h := in.Bounds().Dx(), in.Bounds().Dy()
	out := image.NewRGBA(image.Rect(0, 0, w, h))
	if turned >= 5 {
		out = image.NewRGBA(image.Rect(0, 0, h, w))
	}
	for y := range h {
		for x := range w {
			a, b := x, y
			switch turned {
			case 2:
				a = w - 1 - x
			case 3:
				a, b = w-1-x, h-1-y
			case 4:
				b = h - 1 - y
			case 5:
				a, b = y, x
			case 6:
				a, b = h-1-y, x
			case 7:
				a, b = h-1-y, w-1-x
			case 8:
				a, b = y, w-1-x
			}
			out.SetRGBA(a, b, in.RGBAAt(x, y))
		}
	}
	return out
}
