package org.benchleaf;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Files that stand where a picture is expected, too odd or too large to be kept as files. */
enum OddPicture {
    /** A head that claims 50,000 × 50,000 dots in some 30 bytes. */
    PNG_BOMB {
        @Override
        byte[] bytes() throws IOException {
            return png(50_000, 50_000, deflated(1_000));
        }
    },
    /** A claim just above what is worked on, so that whoever believed it would ask for 400 MB. */
    PNG_ABOVE_LIMIT {
        @Override
        byte[] bytes() throws IOException {
            return png(10_001, 10_000, deflated(1_000));
        }
    },
    /** A small head, and behind it 40 MB of dots packed into 40 kB. */
    PNG_PACKED {
        @Override
        byte[] bytes() throws IOException {
            return png(40, 30, deflated(40_000_000));
        }
    },
    PNG_WITHOUT_DOTS {
        @Override
        byte[] bytes() throws IOException {
            return png(0, 10, deflated(10));
        }
    },
    PNG_CUT {
        @Override
        byte[] bytes() throws IOException {
            byte[] whole = written("png", sheet(400, 300));
            return Arrays.copyOf(whole, whole.length / 2);
        }
    },
    PNG_SOUND {
        @Override
        byte[] bytes() throws IOException {
            return written("png", sheet(400, 300));
        }
    },
    /** A JPEG whose frame claims 65,500 × 65,500 dots. */
    JPEG_BOMB {
        @Override
        byte[] bytes() throws IOException {
            byte[] jpeg = written("jpeg", sheet(40, 30));
            int frame = at(jpeg, 0xC0);
            ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 65_500).putShort(frame + 7, (short) 65_500);
            return jpeg;
        }
    },
    /** A progressive JPEG whose last pass is written 5,000 times. */
    JPEG_MANY_SCANS {
        @Override
        byte[] bytes() throws IOException {
            ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
                ImageWriteParam param = writer.getDefaultWriteParam();
                param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
                writer.setOutput(out);
                writer.write(null, new IIOImage(sheet(16, 16), null, null), param);
            } finally {
                writer.dispose();
            }
            byte[] jpeg = bytes.toByteArray();
            int last = jpeg.length - 2;
            while ((jpeg[last] & 0xFF) != 0xFF || (jpeg[last + 1] & 0xFF) != 0xDA) {
                last--;
            }
            ByteArrayOutputStream many = new ByteArrayOutputStream();
            many.write(jpeg, 0, last);
            for (int scan = 0; scan < 5_000; scan++) {
                many.write(jpeg, last, jpeg.length - 2 - last);
            }
            many.write(jpeg, jpeg.length - 2, 2);
            return many.toByteArray();
        }
    },
    /** A text chunk of 20 kB that unpacks to 20 MB. */
    PNG_TEXT_BOMB {
        @Override
        byte[] bytes() throws IOException {
            return withChunk(written("png", sheet(400, 300)), "zTXt", "Comment\0\0", deflated(20_000_000));
        }
    },
    /** The same in the chunk of international text. */
    PNG_WORLD_TEXT_BOMB {
        @Override
        byte[] bytes() throws IOException {
            return withChunk(written("png", sheet(400, 300)), "iTXt", "Comment\0\1\0en\0Words\0", deflated(20_000_000));
        }
    },
    /** The same in the chunk of the profile. */
    PNG_PROFILE_BOMB {
        @Override
        byte[] bytes() throws IOException {
            return withChunk(written("png", sheet(400, 300)), "iCCP", "Profile\0\0", deflated(20_000_000));
        }
    },
    /** A JPEG cut off in its dots. */
    JPEG_CUT {
        @Override
        byte[] bytes() throws IOException {
            byte[] whole = written("jpeg", sheet(400, 300));
            return Arrays.copyOf(whole, at(whole, 0xDA) + 400);
        }
    },
    /** A JPEG cut off in its head. */
    JPEG_HEAD_CUT {
        @Override
        byte[] bytes() throws IOException {
            return Arrays.copyOf(written("jpeg", sheet(400, 300)), 30);
        }
    },
    /** Four inks and no profile, as a printer's file. */
    JPEG_FOUR_INKS {
        @Override
        byte[] bytes() throws IOException {
            byte[] dots = new byte[64 * 48 * 4];
            new Random(5).nextBytes(dots);
            Raster raster = Raster.createInterleavedRaster(new java.awt.image.DataBufferByte(dots, dots.length), 64, 48,
                    64 * 4, 4, new int[] {0, 1, 2, 3}, null);
            ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
                writer.setOutput(out);
                writer.write(null, new IIOImage(raster, null, null), null);
            } finally {
                writer.dispose();
            }
            return adobe(bytes.toByteArray());
        }

        /** Says in Adobe's own segment that the four channels are inks (ITU-T T.872, 6.5.3). */
        private byte[] adobe(byte[] jpeg) {
            byte[] segment = {(byte) 0xFF, (byte) 0xEE, 0, 14, 'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, 0};
            return ByteBuffer.allocate(jpeg.length + segment.length).put(jpeg, 0, 2).put(segment)
                    .put(jpeg, 2, jpeg.length - 2).array();
        }
    },
    /** Noise that no quality makes light: 1,600 × 1,600 dots with nothing in common. */
    NOISE {
        @Override
        byte[] bytes() throws IOException {
            BufferedImage noise = new BufferedImage(1600, 1600, BufferedImage.TYPE_INT_RGB);
            Random random = new Random(11);
            for (int at = 0; at < 1600 * 1600; at++) {
                noise.setRGB(at % 1600, at / 1600, random.nextInt(0x1000000));
            }
            return written("png", noise);
        }
    },
    TIFF_CUT {
        @Override
        byte[] bytes() {
            return new byte[] {'I', 'I', '*', 0, 8, 0, 0, 0, 2, 0};
        }
    },
    /** A TIFF whose directory names itself as the next one. */
    TIFF_IN_A_CIRCLE {
        @Override
        byte[] bytes() {
            return new byte[] {'I', 'I', '*', 0, 8, 0, 0, 0, 0, 0, 8, 0, 0, 0};
        }
    },
    WEBP_CUT {
        @Override
        byte[] bytes() {
            return "RIFF\u0010\0\0\0WEBPVP8 \u0004\0\0\0".getBytes(StandardCharsets.ISO_8859_1);
        }
    };

    abstract byte[] bytes() throws IOException;

    private static BufferedImage sheet(int width, int height) {
        BufferedImage sheet = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = sheet.createGraphics();
        pen.setColor(Color.LIGHT_GRAY);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.DARK_GRAY);
        for (int at = 0; at < width; at += 7) {
            pen.drawLine(at, 0, width - at, height);
        }
        pen.dispose();
        return sheet;
    }

    private static byte[] written(String format, BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, format, bytes);
        return bytes.toByteArray();
    }

    /** Where the segment of a kind begins in a JPEG (ITU-T T.81, table B.1). */
    private static int at(byte[] jpeg, int marker) {
        for (int at = 2; at < jpeg.length; at += 2 + ByteBuffer.wrap(jpeg).getShort(at + 2)) {
            if ((jpeg[at + 1] & 0xFF) == marker) {
                return at;
            }
        }
        throw new IllegalArgumentException("no segment " + Integer.toHexString(marker));
    }

    /** A PNG by its standard's first edition: head, dots, end; grey, 8 bits. */
    private static byte[] png(int width, int height, byte[] dots) throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        png.write(chunk("IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put((byte) 8).array()));
        png.write(chunk("IDAT", dots));
        png.write(chunk("IEND", new byte[0]));
        return png.toByteArray();
    }

    private static byte[] chunk(String name, byte[] body) {
        byte[] named = ByteBuffer.allocate(4 + body.length).put(name.getBytes(StandardCharsets.US_ASCII)).put(body)
                .array();
        CRC32 sum = new CRC32();
        sum.update(named);
        return ByteBuffer.allocate(8 + named.length).putInt(body.length).put(named).putInt((int) sum.getValue())
                .array();
    }

    /** A chunk put behind the head, which is 33 bytes long with the signature (PNG specification, 11.2.1). */
    private static byte[] withChunk(byte[] png, String name, String start, byte[] packed) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.write(start.getBytes(StandardCharsets.ISO_8859_1));
        body.write(packed);
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.write(png, 0, 33);
        whole.write(chunk(name, body.toByteArray()));
        whole.write(png, 33, png.length - 33);
        return whole.toByteArray();
    }

    private static byte[] deflated(int zeros) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed)) {
            byte[] part = new byte[1 << 16];
            for (int left = zeros; left > 0; left -= part.length) {
                out.write(part, 0, Math.min(left, part.length));
            }
        }
        return packed.toByteArray();
    }
}
