package buildup.engine.hold.statics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Takes a model apart into its {@link Cluster clusters}: bodies that are welded are one, and the graph of what touches what or
 * is fastened to it, the ground in it, falls into blocks that have one body in common at most (Hopcroft and Tarjan,
 * Efficient algorithms for graph manipulation, Communications of the ACM 16, 1973; from memory). The time it takes grows
 * with the contacts and with how high bodies stand on each other.
 */
public final class Clusters {
    private final Model model;
    /** For each body and, behind them, the ground: the body that stands for all that are welded to it. */
    private final int[] one;

    private final int ground;
    private final List<List<Integer>> next = new ArrayList<>();
    private final Map<Long, List<Force>> between = new HashMap<>();

    /** When each body was first come to, from 1 on; 0 before that. */
    private final int[] found;

    private final int[] low;
    /** The cluster in which a body moves, -1 for none. */
    private final int[] cluster;

    /** What the bodies of each cluster stand on: a body, or the ground. */
    private final List<Integer> roots = new ArrayList<>();

    private final List<List<Integer>> members = new ArrayList<>();
    private int clock;

    private Clusters(Model model) {
        this.model = model;
        this.ground = model.section().bodies().size();
        this.one = new int[ground + 1];
        this.found = new int[ground + 1];
        this.low = new int[ground + 1];
        this.cluster = new int[ground + 1];
        Arrays.fill(cluster, -1);
    }

    /** The clusters of a model, each body that may move in one of them; those that stand on the ground first. */
    public static List<Cluster> of(Model model) {
        Clusters clusters = new Clusters(model);
        clusters.weld();
        clusters.connect();
        clusters.split(clusters.find(clusters.ground));
        for (int body : model.free()) {
            int lead = clusters.find(body);
            if (clusters.found[lead] == 0) {
                clusters.floating(lead);
                clusters.split(lead);
            }
        }
        return clusters.made();
    }

    private void weld() {
        Set<Integer> free = new LinkedHashSet<>(model.free());
        for (int body = 0; body <= ground; body++) {
            one[body] = free.contains(body) ? body : ground;
        }
        model.forces().stream()
                .filter(force -> force.kind() == Force.Kind.WELD)
                .forEach(force -> join(find(at(force.on())), find(at(force.against()))));
    }

    private int at(int body) {
        return body == Force.EARTH ? ground : body;
    }

    /** The ground, else the lower number, stands for both. */
    private void join(int a, int b) {
        boolean first = a == find(ground) || (b != find(ground) && a < b);
        one[first ? b : a] = first ? a : b;
    }

    private int find(int body) {
        int at = body;
        while (one[at] != at) {
            at = one[at];
        }
        one[body] = at;
        return at;
    }

    private void connect() {
        for (int i = 0; i <= ground; i++) {
            next.add(new ArrayList<>());
        }
        for (Force force : model.forces()) {
            int a = find(at(force.on()));
            int b = find(at(force.against()));
            if (a != b) {
                List<Force> known = between.computeIfAbsent(edge(a, b), pair -> new ArrayList<>());
                if (known.isEmpty()) {
                    next.get(a).add(b);
                    next.get(b).add(a);
                }
                known.add(force);
            }
        }
    }

    private long edge(int a, int b) {
        return (long) Math.min(a, b) * (ground + 1) + Math.max(a, b);
    }

    /** What nothing joins to the ground moves with one of its bodies, which nothing keeps. */
    private void floating(int body) {
        cluster[body] = roots.size();
        roots.add(ground);
        members.add(List.of(body));
    }

    /** A body that is being walked from, and how many of its neighbors have been seen to. */
    private static final class Step {
        private final int body;
        private final int from;
        private int seen;

        Step(int body, int from) {
            this.body = body;
            this.from = from;
        }
    }

    /** Walks in depth from a body; whatever cannot get above a body but through it, is a block that stands on it. */
    private void split(int start) {
        Deque<Step> way = new ArrayDeque<>();
        Deque<Integer> open = new ArrayDeque<>();
        way.push(come(start, -1));
        while (!way.isEmpty()) {
            Step step = way.peek();
            List<Integer> neighbors = next.get(step.body);
            if (step.seen < neighbors.size()) {
                int other = neighbors.get(step.seen++);
                if (found[other] == 0) {
                    way.push(come(other, step.body));
                    open.push(other);
                } else if (other != step.from) {
                    low[step.body] = Math.min(low[step.body], found[other]);
                }
            } else {
                way.pop();
                if (step.from >= 0) {
                    low[step.from] = Math.min(low[step.from], low[step.body]);
                    if (low[step.body] >= found[step.from]) {
                        block(step.from, step.body, open);
                    }
                }
            }
        }
    }

    private Step come(int body, int from) {
        found[body] = ++clock;
        low[body] = clock;
        return new Step(body, from);
    }

    private void block(int root, int last, Deque<Integer> open) {
        List<Integer> own = new ArrayList<>();
        int body;
        do {
            body = open.pop();
            cluster[body] = roots.size();
            own.add(body);
        } while (body != last);
        own.sort(null);
        roots.add(root);
        members.add(own);
    }

    private List<Cluster> made() {
        List<Map<Integer, Integer>> with = new ArrayList<>();
        members.forEach(own -> with.add(new HashMap<>()));
        for (int body : model.free()) {
            // a body moves in its own cluster, and with what it stands on in all below
            for (int at = find(body); cluster[at] >= 0; at = roots.get(cluster[at])) {
                with.get(cluster[at]).put(body, at);
            }
        }
        List<Cluster> made = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            made.add(new Cluster(model.section(), members.get(i), forces(i), with.get(i)));
        }
        return made;
    }

    /** In the order in which the model has them. */
    private List<Force> forces(int number) {
        List<Integer> own = members.get(number);
        Set<Long> edges = new LinkedHashSet<>();
        for (int body : own) {
            for (int other : next.get(body)) {
                if (other == roots.get(number) || own.contains(other)) {
                    edges.add(edge(body, other));
                }
            }
        }
        return edges.stream()
                .flatMap(edge -> between.getOrDefault(edge, List.of()).stream())
                .toList();
    }
}
