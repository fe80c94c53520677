package longrun.http;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.capacity.Cell;
import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Answers with the published capacity tables: their source, and the confidence of each cell. */
@RestController
class TablesController {

    private final CapacityTables tables = CapacityTables.standard();

    /** Every table without its cells. */
    @GetMapping(path = "/api/tables", produces = MediaType.APPLICATION_JSON_VALUE)
    List<Map<String, Object>> list() {
        return tables.all().stream().map(TablesController::head).toList();
    }

    /** One table, cell by cell. */
    @GetMapping(path = "/api/tables/{id}")
    ResponseEntity<?> table(@PathVariable String id) {
        return tables.find(id)
                .<ResponseEntity<?>>map(t -> ResponseEntity.ok()
                        .contentType(MediaType.APPLICATION_JSON)
                        .body(withCells(t)))
                .orElseGet(() -> Problems.notFound("There is no table with that id. GET /api/tables lists them."));
    }

    private static Map<String, Object> head(CapacityTable t) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", t.id());
        out.put("title", t.title());
        out.put("material", t.material().written());
        out.put("inletPsi", t.inlet().psi());
        out.put("inletInWc", t.inlet().inWc());
        out.put("dropPsi", t.drop().psi());
        out.put("dropInWc", t.drop().inWc());
        out.put("use", t.use().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        out.put("source", t.source());
        out.put("edition", t.edition());
        out.put("notes", t.notes());
        out.put("sizes", t.sizes());
        return out;
    }

    private static Map<String, Object> withCells(CapacityTable t) {
        Map<String, Object> out = head(t);
        List<Object> bores = new ArrayList<>();
        for (int c = 0; c < t.sizes().size(); c++) {
            bores.add(t.bore(c).<Object>map(Bore::inches).orElse("none"));
        }
        out.put("boreIn", bores);
        List<Map<String, Object>> rows = new ArrayList<>();
        for (int r = 0; r < t.rowCount(); r++) {
            Map<String, Object> row = new LinkedHashMap<>();
            List<Object> cells = new ArrayList<>();
            List<String> confidence = new ArrayList<>();
            for (int c = 0; c < t.sizes().size(); c++) {
                Cell cell = t.cell(r, c);
                cells.add(cell.capacity().<Object>map(HeatRate::btuh).orElse("none"));
                confidence.add(cell.confidence().written());
            }
            row.put("lengthFt", t.run(r).feet());
            row.put("capacityBtuh", cells);
            row.put("confidence", confidence);
            rows.add(row);
        }
        out.put("rows", rows);
        return out;
    }
}
