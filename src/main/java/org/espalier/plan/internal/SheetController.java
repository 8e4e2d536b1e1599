package org.espalier.plan.internal;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.UUID;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.patient.ChildId;
import org.espalier.plan.Sheet;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.plan.SheetService;
import org.espalier.science.quantity.Side;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Sheets of the desk on paper. The name of the file says nothing of whose it is: it stays in lists of downloads. */
@RestController
class SheetController {

    private final SheetService sheets;
    private final PaperPrinter printer;
    private final Clock clock;

    SheetController(SheetService sheets, PaperPrinter printer, Clock clock) {
        this.sheets = sheets;
        this.printer = printer;
        this.clock = clock;
    }

    @GetMapping("/api/children/{child}/plan")
    ResponseEntity<byte[]> pdf(@PathVariable UUID child, @RequestParam Map<String, String> asked) {
        var inputs = new SheetInputs(asked);
        var kind = inputs.text("sheet").flatMap(SheetKind::ofWord).orElse(SheetKind.GROWTH);
        var side = inputs.choice("limb", Side.class).orElse(Side.RIGHT);
        var size = inputs.choice("paper", PaperSize.class).orElse(PaperSize.A4);
        return sheets.sheet(new ChildId(child), side, kind, inputs)
                .map(sheet -> answer(sheet, size))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private ResponseEntity<byte[]> answer(Sheet sheet, PaperSize size) {
        var name = ContentDisposition.attachment()
                .filename(sheet.kind().word() + "-" + sheet.today() + ".pdf")
                .build();
        var now = LocalDateTime.ofInstant(clock.instant(), clock.getZone());
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noStore())
                .header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
                .contentType(MediaType.APPLICATION_PDF)
                .body(printer.print(SheetPaper.of(sheet, size, now)));
    }
}
