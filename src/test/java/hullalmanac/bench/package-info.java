/** What benchmarks reckon with; the benchmarks themselves are in {@code src/bench}. */
package hullalmanac.bench;
