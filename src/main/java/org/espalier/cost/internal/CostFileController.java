package org.espalier.cost.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.cost.ChargeService;
import org.espalier.cost.CostReportService;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Costs to be taken away, as on the screens. A hospital whose costs the caller does not administer is not there. */
@RestController
@RequestMapping("/api/costs")
class CostFileController {

    private static final MediaType CSV = MediaType.parseMediaType("text/csv;charset=UTF-8");
    private static final MediaType XLSX =
            MediaType.parseMediaType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

    private final ChargeService charges;
    private final CostReportService reports;
    private final SiteService sites;
    private final CurrentStaff currentStaff;

    CostFileController(ChargeService charges, CostReportService reports, SiteService sites, CurrentStaff currentStaff) {
        this.charges = charges;
        this.reports = reports;
        this.sites = sites;
        this.currentStaff = currentStaff;
    }

    @GetMapping("charges.csv")
    ResponseEntity<byte[]> chargesAsCsv(
            @RequestParam Optional<String> site,
            @RequestParam Optional<LocalDate> from,
            @RequestParam Optional<LocalDate> until) {
        return csv(charges(site, from, until));
    }

    @GetMapping("charges.xlsx")
    ResponseEntity<byte[]> chargesAsWorkbook(
            @RequestParam Optional<String> site,
            @RequestParam Optional<LocalDate> from,
            @RequestParam Optional<LocalDate> until) {
        return workbook(charges(site, from, until));
    }

    @GetMapping("pathways.csv")
    ResponseEntity<byte[]> pathwaysAsCsv(@RequestParam Optional<String> site, @RequestParam Optional<Integer> year) {
        return csv(pathways(site, year));
    }

    @GetMapping("pathways.xlsx")
    ResponseEntity<byte[]> pathwaysAsWorkbook(
            @RequestParam Optional<String> site, @RequestParam Optional<Integer> year) {
        return workbook(pathways(site, year));
    }

    private Optional<Sheet> charges(Optional<String> site, Optional<LocalDate> from, Optional<LocalDate> until) {
        return here(site).map(here -> {
            var last = until.orElseGet(() -> sites.today(here.id()));
            var first = from.orElseGet(() -> last.minusMonths(1));
            return CostSheets.charges(charges.allOfPeriod(here.id(), first, last), here.zone());
        });
    }

    private Optional<Sheet> pathways(Optional<String> site, Optional<Integer> year) {
        return here(site).map(here -> {
            int wanted = year.orElseGet(() -> sites.today(here.id()).getYear());
            var found = mine().stream()
                    .flatMap(one -> IntStream.of(wanted, wanted - 1).mapToObj(each -> reports.pathways(one.id(), each)))
                    .toList();
            return CostSheets.pathways(found, line -> sites.get(line.site()).name());
        });
    }

    private List<Site> mine() {
        return sites.mine().stream()
                .filter(one -> currentStaff.has(Role.COST_ADMINISTRATOR, one.id()))
                .toList();
    }

    private Optional<Site> here(Optional<String> code) {
        return mine().stream()
                .filter(one -> code.filter(wanted -> !wanted.equals(one.code())).isEmpty())
                .findFirst();
    }

    private static ResponseEntity<byte[]> csv(Optional<Sheet> sheet) {
        return answer(sheet.map(CsvFile::of), CSV, "costs.csv");
    }

    private static ResponseEntity<byte[]> workbook(Optional<Sheet> sheet) {
        return answer(sheet.map(Workbook::of), XLSX, "costs.xlsx");
    }

    private static ResponseEntity<byte[]> answer(Optional<byte[]> bytes, MediaType type, String name) {
        return bytes.map(one -> ResponseEntity.ok()
                        .cacheControl(CacheControl.noStore())
                        .contentType(type)
                        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                        .body(one))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }
}
