/** The script of the worker: it draws batches and knows nothing of the page. */
import { serveBatches } from './run-batch.ts';

serveBatches();
