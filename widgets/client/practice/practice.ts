/** The script of exercises, of examples with blanks, and of predictions made on a picture: fetched where a page has some, once the page is awake. */
export { mountExercises, mountReview } from './exercises.ts';
export { mountFading } from './fading.ts';
export { judgeSign, pictureField } from './picture-predictions.ts';
