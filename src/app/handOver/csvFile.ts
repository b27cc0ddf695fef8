export const CSV_TYPE = 'text/csv;charset=utf-8';
