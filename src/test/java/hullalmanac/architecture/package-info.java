/** Holds the code to the layers and habits that DEVELOPERS.md draws. */
package hullalmanac.architecture;
