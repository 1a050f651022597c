import { answerJobs } from './answer-jobs';
import { ENGINE_WORK } from './engine-work';

answerJobs(self, ENGINE_WORK);
