package longrun.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A request written out by hand, so that no client's own idea of what may be sent comes between. */
final class Service {

    private Service() {}

    record Answer(int status, List<String> headers, String body) {

        Optional<String> header(String name) {
            return headers.stream()
                    .filter(h -> h.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT) + ":"))
                    .map(h -> h.substring(name.length() + 1).strip())
                    .findFirst();
        }
    }

    /** Sends a request with these header lines beside the length and the end of the connection. */
    static Answer ask(int port, String method, String path, String body, String... headers) throws IOException {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        List<String> lines = new ArrayList<>(List.of(method + " " + path + " HTTP/1.1"));
        lines.addAll(List.of(headers));
        lines.add("Content-Length: " + bytes.length);
        lines.add("Connection: close");
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(60_000);
            OutputStream out = socket.getOutputStream();
            out.write((String.join("\r\n", lines) + "\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1));
            out.write(bytes);
            out.flush();
            InputStream in = socket.getInputStream();
            String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            int end = all.indexOf("\r\n\r\n");
            List<String> head = List.of(all.substring(0, end).split("\r\n"));
            Answer sent = new Answer(
                    Integer.parseInt(head.get(0).split(" ")[1]), head.subList(1, head.size()), all.substring(end + 4));
            boolean chunked = sent.header("Transfer-Encoding").isPresent();
            return chunked ? new Answer(sent.status(), sent.headers(), joined(sent.body())) : sent;
        }
    }

    /** RFC 9112 section 7.1; sizes count bytes. */
    private static String joined(String chunks) {
        byte[] all = chunks.getBytes(StandardCharsets.UTF_8);
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (true) {
            int line = at;
            while (all[line] != '\r') {
                line++;
            }
            int size = Integer.parseInt(new String(all, at, line - at, StandardCharsets.US_ASCII), 16);
            if (size == 0) {
                return out.toString();
            }
            out.append(new String(all, line + 2, size, StandardCharsets.UTF_8));
            at = line + 2 + size + 2;
        }
    }
}
