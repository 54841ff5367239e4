/** The one style of a handed-over file, and its hash, by which the file's policy knows it. A test works the hash out anew. */
export const fileStyle = [
  ':root{color-scheme:light dark}',
  'body{margin:0;padding:1.5rem;background:#f6efe0;color:#2b211a;font:1.15rem/1.6 Andika,Verdana,sans-serif;overflow-wrap:anywhere}',
  'main{max-width:40rem;margin:0 auto}',
  'h1{font:400 2rem/1.2 Georgia,serif;margin:0 0 .5rem}h2{font:400 1.35rem/1.35 Andika,Verdana,sans-serif;margin:.2rem 0 .8rem}',
  'section{border-top:1.5px solid;margin-top:2rem;padding-top:1rem;break-inside:avoid}',
  '.place,.kind,.quiet{font:italic 1.05rem/1.4 Georgia,serif;margin:.2rem 0}.kind{margin-top:1rem}h1~.quiet{margin-top:.8rem}',
  '.answer{white-space:pre-wrap;margin:.2rem 0 .6rem}',
  'svg,img{display:block;width:100%;max-width:36rem;height:auto;border:1px solid}audio{width:100%;max-width:24rem}',
  '@media(prefers-color-scheme:dark){body{background:#1e1813;color:#efe3cf}}',
  ':lang(ar){font-style:normal!important}',
  '@media print{body{background:none;color:#000;padding:0}audio{display:none}}',
].join('');

export const fileStyleHash = 'sha256-vvAaP6YV8GKV+Ajnl374+wdPFYmzpFpYZMllRXVZrdI=';
