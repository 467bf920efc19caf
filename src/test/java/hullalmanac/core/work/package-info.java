/** What a person does, on small records and on the sample. */
package hullalmanac.core.work;
