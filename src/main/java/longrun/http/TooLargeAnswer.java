package longrun.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** An answer grew over its bound while it was written. */
final class TooLargeAnswer extends IOException {

    private static final long serialVersionUID = 1L;

    /** Bytes up to a bound. */
    static final class Bounded extends OutputStream {

        private final long most;
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

        Bounded(long most) {
            this.most = most;
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] from, int offset, int length) throws IOException {
            if (bytes.size() + (long) length > most) {
                throw new TooLargeAnswer();
            }
            bytes.write(from, offset, length);
        }

        byte[] written() {
            return bytes.toByteArray();
        }
    }
}
