package longrun.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Thrown when an answer grows over its size limit while it is written. */
final class AnswerTooLarge extends IOException {

    private static final long serialVersionUID = 1L;

    /** Collects bytes up to a limit. */
    static final class BoundedBytes extends OutputStream {

        private final long limit;
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

        BoundedBytes(long limit) {
            this.limit = limit;
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] from, int offset, int length) throws IOException {
            if (bytes.size() + (long) length > limit) {
                throw new AnswerTooLarge();
            }
            bytes.write(from, offset, length);
        }

        byte[] written() {
            return bytes.toByteArray();
        }
    }
}
