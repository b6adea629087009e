/** Style sheets are imported for their effect: the bundler puts them beside the page. */
declare module "*.css";
