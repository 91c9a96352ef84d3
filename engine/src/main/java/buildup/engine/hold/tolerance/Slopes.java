package buildup.engine.hold.tolerance;

import java.util.List;

/** What each source alone does to each figure, when it strays by its whole spread. */
final class Slopes {
    private Slopes() {}

    /** For each figure, how far each source moves it: half of what lies between its least and its greatest size, in. */
    static double[][] of(Assembly assembly, List<ErrorSource> sources, List<Gauged> figures) {
        double[][] moved = new double[figures.size()][sources.size()];
        List<BuiltPiece> pieces = assembly.fresh();
        for (int source = 0; source < sources.size(); source++) {
            double[] more = taken(assembly, sources, figures, source, 1, pieces);
            double[] less = taken(assembly, sources, figures, source, -1, pieces);
            for (int figure = 0; figure < figures.size(); figure++) {
                moved[figure][source] = (more[figure] - less[figure]) / 2;
            }
        }
        return moved;
    }

    private static double[] taken(
            Assembly assembly,
            List<ErrorSource> sources,
            List<Gauged> figures,
            int source,
            int side,
            List<BuiltPiece> pieces) {
        double[] strayed = new double[sources.size()];
        strayed[source] = side * sources.get(source).spread();
        assembly.build(strayed, pieces);
        return figures.stream()
                .mapToDouble(one -> one.gauge().of(pieces, assembly.lean(strayed), assembly.rise(strayed)))
                .toArray();
    }
}
