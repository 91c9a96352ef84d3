package buildup.engine.hold.season;

/**
 * The moisture that wood comes to in air that stays as it is, % of its dry weight: Wood Handbook, FPL-GTR-282, 2021,
 * ch. 4, equation 4-5, with its constants for either scale. It follows the handbook's Table 4-2 (30 to 270 °F, 5 to 95 %)
 * within 0.06 at the temperatures of a house.
 */
final class MoistureContent {
    private MoistureContent() {}

    /** @param humidity relative, 0 to 1 */
    static double fahrenheit(double t, double humidity) {
        return moisture(
                humidity,
                330 + 0.452 * t + 0.00415 * t * t,
                0.791 + 0.000463 * t - 0.000000844 * t * t,
                6.34 + 0.000775 * t - 0.0000935 * t * t,
                1.09 + 0.0284 * t - 0.0000904 * t * t);
    }

    /** @param humidity relative, 0 to 1 */
    static double celsius(double t, double humidity) {
        return moisture(
                humidity,
                349 + 1.29 * t + 0.0135 * t * t,
                0.805 + 0.000736 * t - 0.00000273 * t * t,
                6.27 - 0.00938 * t - 0.000303 * t * t,
                1.91 + 0.0407 * t - 0.000293 * t * t);
    }

    private static double moisture(double humidity, double w, double k, double k1, double k2) {
        double kh = k * humidity;
        double bound = k1 * kh;
        double second = k1 * k2 * kh * kh;
        return 1800 / w * (kh / (1 - kh) + (bound + 2 * second) / (1 + bound + second));
    }
}
