/**
 * The six forms of Shrout & Fleiss. First figure: 1 each subject read by other measurers (one-way random);
 * 2 the measurers are a sample of those who may measure (two-way random, absolute agreement); 3 these measurers
 * are all that matter (two-way mixed, consistency). Then 1 for a single reading, k for the mean of all measurers.
 * McGraw & Wong call (2,1) and (2,k) ICC(A,1) and ICC(A,k), (3,1) and (3,k) ICC(C,1) and ICC(C,k).
 */
export type IccForm = "1,1" | "2,1" | "3,1" | "1,k" | "2,k" | "3,k";
