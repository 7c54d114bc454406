package photo

import (
	"bytes"
	"encoding/binary"
)

// orientation is the Exif orientation of a JPEG, 1 where it says none. Source:
// Exif 2.3, tag 0x0112 in the first directory of the APP1 segment; JFIF and
// TIFF 6.0 for the layout, from memory.
func orientation(data []byte) int {
	for at := 2; at+4 <= len(data) && data[at] == 0xFF && data[at+1] != 0xDA; {
		size := int(binary.BigEndian.Uint16(data[at+2:]))
		end := at + 2 + size
		if size < 2 || end > len(data) {
			break
		}
		if body, ok := bytes.CutPrefix(data[at+4:end], []byte("Exif\x00\x00")); ok && data[at+1] == 0xE1 {
			return tiffOrientation(body)
		}
		at = end
	}
	return 1
}

func tiffOrientation(tiff []byte) int {
	const entry, tag = 12, 0x0112
	if len(tiff) < 8 {
		return 1
	}
	var order binary.ByteOrder = binary.BigEndian
	if string(tiff[:2]) == "II" {
		order = binary.LittleEndian
	}
	first := uint64(order.Uint32(tiff[4:]))
	if first+2 > uint64(len(tiff)) {
		return 1
	}
	directory := tiff[first+2:]
	for range order.Uint16(tiff[first:]) {
		if len(directory) < entry {
			return 1
		}
		if order.Uint16(directory) == tag {
			if turned := int(order.Uint16(directory[8:])); turned >= 1 && turned <= 8 {
				return turned
			}
			return 1
		}
		directory = directory[entry:]
	}
	return 1
}
