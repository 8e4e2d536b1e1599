package org.espalier;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.WriteListener;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Searches every answer that the application under test gives, to whomever, for the canaries abroad. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class CanaryFilter extends OncePerRequestFilter {

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var answer = new SearchedAnswer(response, request.getRequestURI());
        chain.doFilter(request, answer);
        answer.finish();
    }

    private static final class SearchedAnswer extends HttpServletResponseWrapper {

        private final String where;
        private @Nullable ServletOutputStream stream;
        private @Nullable PrintWriter writer;

        SearchedAnswer(HttpServletResponse answer, String where) {
            super(answer);
            this.where = where;
        }

        @Override
        public ServletOutputStream getOutputStream() throws IOException {
            if (stream == null) {
                stream = new SearchedStream(super.getOutputStream(), where);
            }
            return stream;
        }

        @Override
        public PrintWriter getWriter() throws IOException {
            if (writer == null) {
                writer = new PrintWriter(new OutputStreamWriter(getOutputStream(), getCharacterEncoding()));
            }
            return writer;
        }

        @Override
        public void flushBuffer() throws IOException {
            flushWriter();
            super.flushBuffer();
        }

        void finish() {
            flushWriter();
            getHeaderNames()
                    .forEach(name -> Canaries.search(
                            Canaries.ABROAD, String.join(" ", getHeaders(name)), "header " + name + " of " + where));
        }

        private void flushWriter() {
            if (writer != null) {
                writer.flush();
            }
        }
    }

    /** Hands on what is written and searches it, a word across two writes too. */
    private static final class SearchedStream extends ServletOutputStream {

        private static final int LONGER_THAN_ANY_WORD = 64;

        private final ServletOutputStream onward;
        private final String where;
        private String before = "";

        SearchedStream(ServletOutputStream onward, String where) {
            this.onward = onward;
            this.where = where;
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            onward.write(bytes, from, length);
            var text = before + new String(bytes, from, length, StandardCharsets.ISO_8859_1);
            Canaries.search(Canaries.ABROAD, text, "answer of " + where);
            before = text.substring(Math.max(0, text.length() - LONGER_THAN_ANY_WORD));
        }

        @Override
        public void flush() throws IOException {
            onward.flush();
        }

        @Override
        public void close() throws IOException {
            onward.close();
        }

        @Override
        public boolean isReady() {
            return onward.isReady();
        }

        @Override
        public void setWriteListener(WriteListener listener) {
            onward.setWriteListener(listener);
        }
    }
}
