package org.espalier.course.internal;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.UUID;
import org.espalier.course.Course;
import org.espalier.course.CourseService;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.patient.ChildId;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The course on paper. The name of the file says nothing of whose it is: it stays in lists of downloads. */
@RestController
@RequestMapping("/api/course/{child}")
class CoursePrintController {

    private final CourseService courses;
    private final PaperPrinter printer;
    private final Clock clock;

    CoursePrintController(CourseService courses, PaperPrinter printer, Clock clock) {
        this.courses = courses;
        this.printer = printer;
        this.clock = clock;
    }

    @GetMapping("pdf")
    ResponseEntity<byte[]> pdf(@PathVariable UUID child) {
        return courses.print(new ChildId(child)).map(this::answer).orElseGet(() -> ResponseEntity.notFound()
                .build());
    }

    private ResponseEntity<byte[]> answer(Course course) {
        var name = ContentDisposition.attachment()
                .filename("course-" + course.today() + ".pdf")
                .build();
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noStore())
                .header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
                .contentType(MediaType.APPLICATION_PDF)
                .body(printer.print(CoursePaper.of(course, LocalDateTime.ofInstant(clock.instant(), course.zone()))));
    }
}
