package buildup.engine.buy;

/**
 * What shows of a piece along a run.
 *
 * @param run number of the run
 * @param body number of the piece
 * @param faces along its sticks and returns, sq in
 * @param ends where it is cut square and its end grain shows, sq in
 */
record FaceArea(int run, int body, double faces, double ends) {
    double area() {
        return faces + ends;
    }
}
