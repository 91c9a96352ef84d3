package buildup.engine.hold.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Takes a model apart into its {@link Cluster clusters}: bodies that are welded are one, and the graph of what touches what or
 * is fastened to it, the ground in it, falls into blocks that have one body in common at most (Hopcroft and Tarjan,
 * Efficient algorithms for graph manipulation, Communications of the ACM 16, 1973; from memory). The time it takes grows
 * with the contacts and with how high bodies stand on each other.
 */
final class Clusters {
    private final Bodies bodies;
    private final List<Force> forces;
    /** For each body and, behind them, the ground: the body that stands for all that are welded to it. */
    private final int[] one;

    private final int ground;
    private final Links links;

    /** When each body was first come to, from 1 on; 0 before that. */
    private final int[] found;

    private final int[] low;
    /** The cluster in which a body moves, -1 for none. */
    private final int[] cluster;

    /** What the bodies of each cluster stand on: a body, or the ground. */
    private final List<Integer> roots = new ArrayList<>();

    private final List<int[]> members = new ArrayList<>();
    /** Bodies that have been come to and are in no cluster yet. */
    private final int[] open;

    /** For each body that stands for others, its place in its cluster. */
    private final int[] rank;

    private int waiting;
    private int clock;

    private Clusters(Bodies bodies, List<Force> forces) {
        this.bodies = bodies;
        this.forces = forces;
        this.ground = bodies.section().bodies().size();
        this.links = new Links(ground + 1, forces.size());
        this.one = new int[ground + 1];
        this.found = new int[ground + 1];
        this.low = new int[ground + 1];
        this.cluster = new int[ground + 1];
        this.open = new int[ground + 1];
        this.rank = new int[ground + 1];
        Arrays.fill(cluster, -1);
    }

    /** The clusters of a model, each body that may move in one of them; those that stand on the ground first. */
    static List<Cluster> of(Bodies bodies, List<Force> forces) {
        Clusters clusters = new Clusters(bodies, forces);
        clusters.weld();
        clusters.connect();
        clusters.split(clusters.find(clusters.ground));
        for (int i = 0; i < bodies.count(); i++) {
            int lead = clusters.find(bodies.moving(i));
            if (clusters.found[lead] == 0) {
                clusters.floating(lead);
                clusters.split(lead);
            }
        }
        return clusters.made();
    }

    private void weld() {
        Arrays.fill(one, ground);
        for (int i = 0; i < bodies.count(); i++) {
            one[bodies.moving(i)] = bodies.moving(i);
        }
        int on = ground;
        int against = ground;
        for (int i = 0; i < forces.size(); i++) {
            Force force = forces.get(i);
            if (force.kind() == Force.Kind.WELD && (force.on() != on || force.against() != against)) {
                on = force.on();
                against = force.against();
                join(find(at(on)), find(at(against)));
            }
        }
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
        // forces of one contact or fastener follow each other
        int on = 0;
        int against = 0;
        int a = 0;
        int b = 0;
        int pair = Links.NONE;
        for (int i = 0; i < forces.size(); i++) {
            Force force = forces.get(i);
            if (i == 0 || force.on() != on || force.against() != against) {
                on = force.on();
                against = force.against();
                a = find(at(on));
                b = find(at(against));
                pair = a == b ? Links.NONE : links.pair(a, b);
            }
            if (pair != Links.NONE) {
                links.add(pair, i);
            }
        }
    }

    /** What nothing joins to the ground moves with one of its bodies, which nothing keeps. */
    private void floating(int body) {
        cluster[body] = roots.size();
        roots.add(ground);
        members.add(new int[] {body});
    }

    /** Walks in depth from a body; whatever cannot get above a body but through it, is a block that stands on it. */
    private void split(int start) {
        // bodies on the way, where each was come from, and the link of each that is to be followed next
        int[] way = new int[ground + 1];
        int[] from = new int[ground + 1];
        int[] next = new int[ground + 1];
        int deep = 0;
        way[0] = start;
        from[0] = -1;
        next[0] = links.first(start);
        come(start);
        while (deep >= 0) {
            int body = way[deep];
            if (next[deep] != Links.NONE) {
                int other = links.other(next[deep]);
                next[deep] = links.next(next[deep]);
                if (found[other] == 0) {
                    deep++;
                    way[deep] = other;
                    from[deep] = body;
                    next[deep] = links.first(other);
                    come(other);
                    open[waiting++] = other;
                } else if (other != from[deep]) {
                    low[body] = Math.min(low[body], found[other]);
                }
            } else {
                int above = from[deep--];
                if (above >= 0) {
                    low[above] = Math.min(low[above], low[body]);
                    if (low[body] >= found[above]) {
                        block(above, body);
                    }
                }
            }
        }
    }

    private void come(int body) {
        found[body] = ++clock;
        low[body] = clock;
    }

    private void block(int root, int last) {
        int first = waiting - 1;
        while (open[first] != last) {
            first--;
        }
        int[] own = Arrays.copyOfRange(open, first, waiting);
        waiting = first;
        for (int body : own) {
            cluster[body] = roots.size();
        }
        Arrays.sort(own);
        for (int i = 0; i < own.length; i++) {
            rank[own[i]] = i;
        }
        roots.add(root);
        members.add(own);
    }

    private List<Cluster> made() {
        int[][] places = new int[members.size()][ground];
        for (int[] own : places) {
            Arrays.fill(own, -1);
        }
        for (int i = 0; i < bodies.count(); i++) {
            int body = bodies.moving(i);
            // a body moves in its own cluster, and with what it stands on in all below
            for (int at = find(body); cluster[at] >= 0; at = roots.get(cluster[at])) {
                places[cluster[at]][body] = rank[at];
            }
        }
        List<Cluster> made = new ArrayList<>(members.size());
        for (int i = 0; i < members.size(); i++) {
            made.add(new Cluster(bodies, members.get(i), forces(i), places[i]));
        }
        return List.copyOf(made);
    }

    /** Those between its bodies, and between them and what it stands on. */
    private List<Force> forces(int number) {
        List<Force> own = new ArrayList<>();
        for (int body : members.get(number)) {
            for (int link = links.first(body); link != Links.NONE; link = links.next(link)) {
                int other = links.other(link);
                // between two of its own once, from the one that comes first
                if (other == roots.get(number) || (cluster[other] == number && other > body)) {
                    links.into(link, forces, own);
                }
            }
        }
        return List.copyOf(own);
    }
}
