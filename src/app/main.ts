import './tokens.css';
