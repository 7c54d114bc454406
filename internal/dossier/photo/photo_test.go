package photo_test

import (
	"bytes"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/dossier/photo"
)

// halves is a picture whose upper half is red and whose lower half is blue.
func halves(w, h int) image.Image {
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			c := color.RGBA{200, 0, 0, 255}
			if y >= h/2 {
				c = color.RGBA{0, 0, 200, 255}
			}
			img.SetRGBA(x, y, c)
		}
	}
	return img
}

func asJPEG(t *testing.T, img image.Image) []byte {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, jpeg.Encode(&out, img, nil))
	return out.Bytes()
}

func asPNG(t *testing.T, img image.Image) []byte {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, png.Encode(&out, img))
	return out.Bytes()
}

// exif puts an APP1 segment with an orientation and an invented position
// behind the start of a JPEG. Layout: TIFF 6.0 and Exif 2.3, from memory.
func exif(file []byte, order binary.AppendByteOrder, turned uint16) []byte {
	mark := map[bool]string{true: "II", false: "MM"}[order.String() == "LittleEndian"]
	tiff := order.AppendUint32(order.AppendUint16([]byte(mark), 42), 8)
	tiff = order.AppendUint16(tiff, 2)
	tiff = order.AppendUint16(order.AppendUint16(tiff, 0x0112), 3)
	tiff = order.AppendUint16(order.AppendUint16(order.AppendUint32(tiff, 1), turned), 0)
	tiff = order.AppendUint16(order.AppendUint16(tiff, 0x8825), 4)
	tiff = order.AppendUint32(order.AppendUint32(order.AppendUint32(tiff, 1), 38), 0)
	tiff = append(tiff, "GPS N 51 12 0 E 7 3 0"...)
	body := append([]byte("Exif\x00\x00"), tiff...)
	segment := append([]byte{0xFF, 0xE1}, binary.BigEndian.AppendUint16(nil, uint16(len(body)+2))...)
	return append(append(append([]byte{}, file[:2]...), append(segment, body...)...), file[2:]...)
}

// TestScale: the longer side has at most so many pixels, the shape stays, and
// nothing of the position is left.
func TestScale(t *testing.T) {
	for _, c := range []struct{ w, h, wantW, wantH int }{
		{1200, 800, 600, 400}, {300, 900, 200, 600}, {40, 30, 40, 30}, {600, 600, 600, 600}, {6000, 2, 600, 1},
	} {
		p, err := photo.Scale(bytes.NewReader(exif(asJPEG(t, halves(c.w, c.h)), binary.LittleEndian, 1)), 600)
		require.NoError(t, err)
		require.Equal(t, []int{c.wantW, c.wantH}, []int{p.Width, p.Height})
		config, err := jpeg.DecodeConfig(bytes.NewReader(p.JPEG))
		require.NoError(t, err)
		require.Equal(t, []int{p.Width, p.Height}, []int{config.Width, config.Height})
		require.NotContains(t, string(p.JPEG), "GPS")
		require.NotContains(t, string(p.JPEG), "Exif")
	}
	p, err := photo.Scale(bytes.NewReader(asPNG(t, halves(1000, 500))), 600)
	require.NoError(t, err)
	require.Equal(t, []int{600, 300}, []int{p.Width, p.Height})
}

// TestUpright: the picture stands as its camera was held. Where the red half
// lies for each orientation follows from the table of Exif 2.3, from memory.
func TestUpright(t *testing.T) {
	const w, h = 64, 48
	for turned, red := range map[uint16]string{
		0: "top", 1: "top", 2: "top", 3: "bottom", 4: "bottom", 5: "left", 6: "right", 7: "right", 8: "left", 9: "top",
	} {
		for _, order := range []binary.AppendByteOrder{binary.LittleEndian, binary.BigEndian} {
			p, err := photo.Scale(bytes.NewReader(exif(asJPEG(t, halves(w, h)), order, turned)), 600)
			require.NoError(t, err)
			img, err := jpeg.Decode(bytes.NewReader(p.JPEG))
			require.NoError(t, err)
			at := map[string]image.Point{
				"top": {p.Width / 2, 2}, "bottom": {p.Width / 2, p.Height - 3}, "left": {2, p.Height / 2}, "right": {p.Width - 3, p.Height / 2},
			}[red]
			r, _, b, _ := img.At(at.X, at.Y).RGBA()
			require.Greater(t, r, b, "orientation %d: %s is not red", turned, red)
		}
	}
}

// bomb is a small PNG that claims to hold 50,000 by 50,000 pixels.
func bomb() []byte {
	out := []byte("\x89PNG\r\n\x1a\n")
	header := binary.BigEndian.AppendUint32(binary.BigEndian.AppendUint32([]byte("IHDR"), 50_000), 50_000)
	header = append(header, 8, 6, 0, 0, 0)
	out = binary.BigEndian.AppendUint32(out, uint32(len(header)-4))
	return binary.BigEndian.AppendUint32(append(out, header...), crc32.ChecksumIEEE(header))
}

// endless never ends.
type endless struct{}

func (endless) Read(p []byte) (int, error) { return len(p), nil }

func TestRefused(t *testing.T) {
	whole := asJPEG(t, halves(64, 48))
	for name, c := range map[string]struct {
		file io.Reader
		want string
	}{
		"a bomb":     {bytes.NewReader(bomb()), "50000 × 50000 pixels are more than 60 million"},
		"a text":     {bytes.NewReader([]byte("not a picture")), "the file is neither a JPEG nor a PNG"},
		"nothing":    {bytes.NewReader(nil), "the file is neither a JPEG nor a PNG"},
		"cut off":    {bytes.NewReader(whole[:len(whole)/2]), "the file is broken (unexpected EOF)"},
		"a GIF":      {bytes.NewReader([]byte("GIF89a\x01\x00\x01\x00")), "the file is neither a JPEG nor a PNG"},
		"no end":     {endless{}, "the file is larger than 64 MiB"},
		"unreadable": {failing{}, "can't be read (no such disk)"},
	} {
		_, err := photo.Scale(c.file, 600)
		require.EqualError(t, err, c.want, name)
	}
}

type failing struct{}

func (failing) Read([]byte) (int, error) { return 0, errors.New("no such disk") }

// FuzzScale: whatever a file holds, there is a picture or an error.
func FuzzScale(f *testing.F) {
	f.Add(bomb())
	f.Add([]byte("\xff\xd8\xff\xe1\x00\x10Exif\x00\x00II*\x00\x08\x00\x00\x00"))
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := photo.Scale(bytes.NewReader(data), 50)
		if err == nil {
			require.NotEmpty(t, p.JPEG)
		}
	})
}
