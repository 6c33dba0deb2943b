import '@fontsource-variable/source-sans-3/index.css';
import '@fontsource-variable/source-serif-4/index.css';
import './tokens.css';
import './slab-spring-app.ts';
