package org.espalier.course.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.time.Clock;
import java.time.LocalDateTime;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.sax.SAXResult;
import org.apache.fop.apps.FOPException;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.FopFactoryBuilder;
import org.apache.fop.apps.io.ResourceResolverFactory;
import org.apache.fop.configuration.ConfigurationException;
import org.apache.fop.configuration.DefaultConfigurationBuilder;
import org.apache.xmlgraphics.io.Resource;
import org.apache.xmlgraphics.io.ResourceResolver;
import org.apache.xmlgraphics.util.MimeConstants;
import org.espalier.course.Course;
import org.springframework.stereotype.Component;

/** Prints a course. Typeface and settings come from the program itself; nothing outside it is ever read. */
@Component
class CoursePrinter {

    private static final String FOLDER = "/org/espalier/course/paper/";

    private final FopFactory factory;
    private final Clock clock;

    CoursePrinter(Clock clock) throws IOException, ConfigurationException {
        this.clock = clock;
        try (var settings = CoursePrinter.class.getResourceAsStream(FOLDER + "settings.xml")) {
            factory = new FopFactoryBuilder(URI.create("paper:/"), new OwnResources())
                    .setConfiguration(new DefaultConfigurationBuilder().build(settings))
                    .build();
        }
    }

    /** The course as PDF, always two pages. */
    byte[] print(Course course) {
        var now = LocalDateTime.ofInstant(clock.instant(), course.zone());
        var out = new ByteArrayOutputStream();
        try {
            var fop = factory.newFop(MimeConstants.MIME_PDF, out);
            TransformerFactory.newInstance()
                    .newTransformer()
                    .transform(new DOMSource(CoursePaper.of(course, now)), new SAXResult(fop.getDefaultHandler()));
            return out.toByteArray();
        } catch (FOPException | TransformerException e) {
            throw new IllegalStateException("The course cannot be printed", e);
        }
    }

    /** Finds what a page needs among the program's own resources, and nothing else. */
    private static final class OwnResources implements ResourceResolver {

        private final ResourceResolver temporary = ResourceResolverFactory.createDefaultResourceResolver();

        @Override
        public Resource getResource(URI uri) throws IOException {
            var name = uri.getPath().substring(uri.getPath().lastIndexOf('/') + 1);
            var found = CoursePrinter.class.getResourceAsStream(FOLDER + name);
            if (found == null) {
                throw new IOException("not among the program's own: " + uri);
            }
            return new Resource(found);
        }

        @Override
        public OutputStream getOutputStream(URI uri) throws IOException {
            return temporary.getOutputStream(uri);
        }
    }
}
