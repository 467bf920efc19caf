/** The sun held against the tables and examples of FAO-56. */
package hullalmanac.core.sun;
