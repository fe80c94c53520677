package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import longrun.drawing.svg.Point;
import longrun.drawing.svg.Stroke;
import longrun.plan.choice.Direction;

/**
 * Where one section lies.
 *
 * @param node where it leaves
 * @param corners where its first leg begins and each leg ends; the first differs from the node where several sections
 *     leave the same way and so are drawn side by side off a header
 * @param ways the direction each leg is drawn in
 * @param hookEnd where the hookup meets the appliance; the pipe's end where there is none
 * @param hookWay the direction of the hookup
 * @param appliance the centre of the appliance
 */
record Laid(Point node, List<Point> corners, List<Direction> ways, Point hookEnd, Direction hookWay, Point appliance) {

    Point end() {
        return corners.get(corners.size() - 1);
    }

    List<Stroke> legs() {
        List<Stroke> out = new ArrayList<>();
        for (int k = 1; k < corners.size(); k++) {
            out.add(new Stroke(corners.get(k - 1), corners.get(k)));
        }
        return out;
    }

    boolean hasHeader() {
        return node.distance(corners.get(0)) > 0.01;
    }

    Laid moved(double dx, double dy) {
        return new Laid(
                node.plus(dx, dy),
                corners.stream().map(p -> p.plus(dx, dy)).toList(),
                ways,
                hookEnd.plus(dx, dy),
                hookWay,
                appliance.plus(dx, dy));
    }
}
