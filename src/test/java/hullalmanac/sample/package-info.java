/**
 * Makes the sample: the record of an invented business, from one seed. Nobody and nothing in it is
 * real, and its lives follow a law of their own that the program does not know.
 *
 * <p>Start at {@link hullalmanac.sample.SampleRecord}; {@code WriteSample} writes it into
 * sample-db.
 */
package hullalmanac.sample;
