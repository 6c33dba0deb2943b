/** What draws and judges measured bands: one piece, loaded for cells that hold some. */
export { measuredPoints, measuredRemarks } from './measured-points.ts';
export { measuredRatings, ratingsTable } from './measured-ratings.ts';
