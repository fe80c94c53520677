package longrun.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Answers 415 to a body whose content type is not JSON, 413 to one over 1 MiB, and 503 while too many requests wait. The body
 * is read here, whole, because a limit inside the JSON reader would show as an error of the JSON (400).
 */
@Component
class BodyLimit extends OncePerRequestFilter {

    static final int MAX_BYTES = 1 << 20;

    private final ObjectMapper json;
    private final Semaphore places;

    BodyLimit(ObjectMapper json, ServiceLimits limits) {
        this.json = json;
        this.places = new Semaphore(limits.waiting());
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !request.getServletPath().startsWith("/api/");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (request.getMethod().equals("POST") && !isJson(request.getContentType())) {
            write(response, Problems.notJson());
            return;
        }
        if (request.getContentLengthLong() > MAX_BYTES) {
            tooLarge(response);
            return;
        }
        if (!places.tryAcquire()) {
            response.setHeader(HttpHeaders.RETRY_AFTER, "1");
            write(response, Problems.busy("Too many requests are waiting. Ask again in a moment."));
            return;
        }
        try {
            byte[] body = request.getInputStream().readNBytes(MAX_BYTES + 1);
            if (body.length > MAX_BYTES) {
                tooLarge(response);
                return;
            }
            chain.doFilter(new Buffered(request, body), response);
        } finally {
            places.release();
        }
    }

    private static boolean isJson(@Nullable String type) {
        try {
            return type != null && MediaType.APPLICATION_JSON.equalsTypeAndSubtype(MediaType.parseMediaType(type));
        } catch (InvalidMediaTypeException e) {
            return false;
        }
    }

    private void tooLarge(HttpServletResponse response) throws IOException {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.PAYLOAD_TOO_LARGE, "A plan is at most 1 MiB (1,048,576 bytes). Send a smaller one.");
        problem.setTitle("Plan too large");
        write(response, problem);
    }

    private void write(HttpServletResponse response, ProblemDetail problem) throws IOException {
        response.setStatus(problem.getStatus());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.getOutputStream().write(json.writeValueAsBytes(problem));
    }

    /** The request with its body already read. */
    private static final class Buffered extends HttpServletRequestWrapper {

        private final byte[] body;

        Buffered(HttpServletRequest request, byte[] body) {
            super(request);
            this.body = body;
        }

        @Override
        public ServletInputStream getInputStream() {
            return new Bytes(new ByteArrayInputStream(body));
        }

        @Override
        public BufferedReader getReader() {
            return new BufferedReader(new InputStreamReader(getInputStream(), StandardCharsets.UTF_8));
        }
    }

    private static final class Bytes extends ServletInputStream {

        private final ByteArrayInputStream bytes;

        Bytes(ByteArrayInputStream bytes) {
            this.bytes = bytes;
        }

        @Override
        public boolean isFinished() {
            return bytes.available() == 0;
        }

        @Override
        public boolean isReady() {
            return true;
        }

        @Override
        public void setReadListener(ReadListener listener) {
            throw new IllegalStateException("the body is read at once, not asynchronously");
        }

        @Override
        public int read() {
            return bytes.read();
        }

        @Override
        public int read(byte[] into, int offset, int length) {
            return bytes.read(into, offset, length);
        }
    }
}
