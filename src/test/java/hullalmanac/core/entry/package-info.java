/** The readers of what people type, held against tables of spellings and against garbage. */
package hullalmanac.core.entry;
