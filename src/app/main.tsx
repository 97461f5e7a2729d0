import terrace from '../../demo-data/terrace.project.json?raw';
import { createStudio } from '../workers/client';
import { startApp } from './start';

void startApp(document.getElementById('app')!, terrace, createStudio);
