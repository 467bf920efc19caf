/** Numbers from outside the project, and the loader that refuses those without a source. */
package hullalmanac.reference;
