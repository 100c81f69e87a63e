// Where a thread of `verify` begins: it loads the program once and verifies each path that it is sent.
import { parentPort, workerData } from 'node:worker_threads';
import { diskWorld } from '../world/index.ts';
import { laneHere } from './lane.ts';
import type { ThreadSetting } from './lane-in-thread.ts';

const { program } = workerData as ThreadSetting;
const lane = laneHere({ world: diskWorld(), program });
parentPort?.on('message', (path: string) => {
  void lane.verify(path).then((verified) => parentPort?.postMessage(verified));
});
