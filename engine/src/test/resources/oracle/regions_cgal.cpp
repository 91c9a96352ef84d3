// Figures of stacks by CGAL's sets of curves with exact arcs, one line for each stack read from standard input in the form
// that regions_geos.py describes: ID, area of the union of the bodies of the stack, and of the overlaps of pairs, `i-j:area`.
//
// An arc goes through its two ends and a third point near its middle, all three taken as exact: its circle is off the
// given one by rounding alone.
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/General_polygon_set_2.h>
#include <CGAL/Gps_circle_segment_traits_2.h>
#include <CGAL/Lazy_exact_nt.h>
#include <cmath>
#include <iostream>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

typedef CGAL::Exact_predicates_exact_constructions_kernel Kernel;
typedef CGAL::Gps_circle_segment_traits_2<Kernel> Traits;
typedef CGAL::General_polygon_set_2<Traits> Set;
typedef Traits::General_polygon_2 Polygon;
typedef Traits::General_polygon_with_holes_2 Holed;
typedef Traits::Curve_2 Curve;
typedef Traits::X_monotone_curve_2 Monotone;
typedef Kernel::Point_2 Point;

// A segment as read; `via` is a third point of an arc.
struct Segment {
    bool arc;
    double x1, y1, x2, y2, viaX, viaY;
};

static void add(const Curve &curve, Polygon &polygon) {
    Traits traits;
    std::vector<CGAL::Object> parts;
    traits.make_x_monotone_2_object()(curve, std::back_inserter(parts));
    for (const CGAL::Object &part : parts) {
        Monotone monotone;
        if (CGAL::assign(monotone, part)) {
            polygon.push_back(monotone);
        }
    }
}

// Twice the area between the curve, walked from its source, and the origin.
static double twice(const Monotone &c, double &x0, double &y0) {
    double x1 = CGAL::to_double(c.source().x()) - x0, y1 = CGAL::to_double(c.source().y()) - y0;
    double x2 = CGAL::to_double(c.target().x()) - x0, y2 = CGAL::to_double(c.target().y()) - y0;
    double sum = x1 * y2 - x2 * y1;
    if (c.is_circular()) {
        const Kernel::Circle_2 circle = c.supporting_circle();
        double cx = CGAL::to_double(circle.center().x()) - x0, cy = CGAL::to_double(circle.center().y()) - y0;
        double r2 = CGAL::to_double(circle.squared_radius());
        double turn = std::atan2(y2 - cy, x2 - cx) - std::atan2(y1 - cy, x1 - cx);
        // at most half a turn; one of a hair may come out a hair backward
        bool left = c.orientation() == CGAL::COUNTERCLOCKWISE;
        if (left && turn < -1e-6) turn += 2 * M_PI;
        if (!left && turn > 1e-6) turn -= 2 * M_PI;
        sum += r2 * (turn - std::sin(turn));
    }
    return sum;
}

static double area(const Polygon &polygon) {
    double sum = 0;
    double x0 = CGAL::to_double(polygon.curves_begin()->source().x());
    double y0 = CGAL::to_double(polygon.curves_begin()->source().y());
    for (auto c = polygon.curves_begin(); c != polygon.curves_end(); ++c) {
        sum += twice(*c, x0, y0);
    }
    return std::abs(sum) / 2;
}

static double area(const Set &set) {
    std::vector<Holed> parts;
    set.polygons_with_holes(std::back_inserter(parts));
    double sum = 0;
    for (const Holed &part : parts) {
        sum += area(part.outer_boundary());
        for (auto hole = part.holes_begin(); hole != part.holes_end(); ++hole) {
            sum -= area(*hole);
        }
    }
    return sum;
}

// Each segment begins where the one before ends, to the last digit.
static Polygon closed(std::vector<Segment> walk) {
    Polygon polygon;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        const Segment &next = walk[(i + 1) % walk.size()];
        walk[i].x2 = next.x1;
        walk[i].y2 = next.y1;
        const Segment &s = walk[i];
        Point from(s.x1, s.y1), to(s.x2, s.y2);
        if (from != to) {
            add(s.arc ? Curve(from, Point(s.viaX, s.viaY), to) : Curve(from, to), polygon);
        }
    }
    return polygon;
}

static std::string figures(const std::vector<Polygon> &bodies, const std::vector<bool> &own) {
    Set all;
    std::ostringstream laps;
    laps.precision(12);
    for (std::size_t i = 0; i < bodies.size(); ++i) {
        if (own[i]) {
            all.join(bodies[i]);
        }
        for (std::size_t j = i + 1; j < bodies.size(); ++j) {
            if (own[i] || own[j]) {
                Set common(bodies[i]);
                common.intersection(bodies[j]);
                double shared = area(common);
                if (shared > 1e-7) {
                    laps << (laps.tellp() > 0 ? ";" : "") << i << "-" << j << ":" << shared;
                }
            }
        }
    }
    std::ostringstream told;
    told.precision(12);
    told << area(all) << " " << (laps.tellp() > 0 ? laps.str() : "-");
    return told.str();
}

int main() {
    std::vector<Polygon> bodies;
    std::vector<bool> own;
    std::vector<Segment> walk;
    std::string line, name, what;
    while (std::getline(std::cin, line)) {
        std::istringstream words(line);
        words >> what;
        if ((what == "body" || what == "end") && !walk.empty()) {
            bodies.push_back(closed(walk));
            walk.clear();
        }
        if (what == "stack") {
            words >> name;
        } else if (what == "body") {
            int mine;
            words >> mine;
            own.push_back(mine == 1);
        } else if (what == "end") {
            std::cout << name << " " << figures(bodies, own) << std::endl;
            bodies.clear();
            own.clear();
        } else {
            Segment s = {what == "A", 0, 0, 0, 0, 0, 0};
            words >> s.x1 >> s.y1 >> s.x2 >> s.y2;
            if (s.arc) {
                double cx, cy;
                int clockwise;
                words >> cx >> cy >> clockwise;
                double start = std::atan2(s.y1 - cy, s.x1 - cx), turn = std::atan2(s.y2 - cy, s.x2 - cx) - start;
                while (clockwise && turn >= 0) turn -= 2 * M_PI;
                while (clockwise && turn < -2 * M_PI) turn += 2 * M_PI;
                while (!clockwise && turn <= 0) turn += 2 * M_PI;
                while (!clockwise && turn > 2 * M_PI) turn -= 2 * M_PI;
                double r = std::hypot(s.x1 - cx, s.y1 - cy), middle = start + turn / 2;
                s.viaX = cx + r * std::cos(middle);
                s.viaY = cy + r * std::sin(middle);
            }
            walk.push_back(s);
        }
    }
    return 0;
}
