import { backdrop, bolt, common, linear, relief, rod, webbing, zincRod } from '../materials.mjs'

/** The rubber V on the winch post, seen from the side and a little above, with the stem lying in it. */
export const draw = ({ bears }) => {
  const gap = bears ? 0 : 90
  return {
    defs: common() + relief('vRubber', { frequency: '0.3', octaves: 4, height: 2.2, seed: 17 }) + webbing('yellow', { light: '#e7b528', mid: '#cf9a12', dark: '#8b6405', pitch: 7 }) +
      linear('hull', [[0, '#8d989e'], [0.16, '#f7f8f8'], [0.4, '#e9eceb'], [1, '#aeb8bd']], [0, 0, 1, 0]) + linear('post', [[0, '#e4e8e9'], [0.3, '#b4bbbe'], [0.75, '#8b9397'], [1, '#535b5f']], [0, 0, 1, 0]) + linear('face', [[0, '#3c4043'], [0.5, '#26292b'], [1, '#0f1112']]) + linear('boot', [[0, '#1f4e6e'], [1, '#0f2c40']]),
    body: `
      <rect width="1600" height="1200" fill="#b7c6cf"/>
      ${backdrop('<rect x="-300" y="-200" width="2200" height="760" fill="#c2d2dc"/><rect x="-300" y="520" width="2200" height="200" fill="#758b70"/><rect x="-300" y="700" width="2200" height="800" fill="#8a867c"/>', 'veryFar')}
      <g filter="url(#cast)"><rect x="180" y="120" width="190" height="1200" fill="url(#post)" filter="url(#spangle)"/></g>
      <g filter="url(#cast)"><path d="M250 470 H640 V640 H250 Z" fill="url(#zinc)" filter="url(#spangle)"/></g>${bolt(300, 555, 42)}${bolt(420, 555, 42, 0.8)}
      <g transform="translate(${gap} 0)"><g filter="url(#cast)"><path d="M770 -60 C770 260 850 700 1060 1260 H1700 V-60 Z" fill="url(#hull)"/></g>
        <path d="M772 -60 C772 260 850 700 1060 1260" fill="none" stroke="#6b767c" stroke-width="9" stroke-opacity="0.7"/><path d="M846 -60 C846 260 920 700 1120 1260" fill="none" stroke="#fff" stroke-width="26" opacity="0.8" filter="url(#softer)"/>
        <path d="M985 1050 Q1300 980 1700 1010 V1300 H1080 Z" fill="url(#boot)"/></g>
      <g filter="url(#cast)"><path d="M600 330 L810 400 Q846 556 874 640 L800 800 L600 760 q-40 -10 -40 -50 V380 q0 -60 40 -50 Z" fill="url(#face)" filter="url(#vRubber)"/></g>
      <path d="M600 330 L810 400 L786 436 L592 372 Z" fill="#6a6f73" filter="url(#vRubber)"/>
      <path d="M810 400 Q846 556 874 640" fill="none" stroke="${bears ? '#050606' : '#5a5e61'}" stroke-width="12"/>
      
      <path d="M826 400 Q862 556 892 660" fill="none" stroke="#000" stroke-opacity="0.3" stroke-width="30" filter="url(#softer)"/>${bolt(660, 560, 46)}
      ${rod('M792 262 q52 -14 70 16 q8 36 -52 40', 22, zincRod)}<g filter="url(#cast)"><path d="M330 170 L770 246 L766 300 L326 236 Z" fill="url(#yellow)"/></g><path d="M330 170 L770 246 L766 300 L326 236 Z" fill="#000" opacity="0.12"/>${rod('M764 272 L800 282', 18, zincRod)}
      <g filter="url(#cast)"><circle cx="292" cy="200" r="104" fill="url(#steel)"/><circle cx="292" cy="200" r="78" fill="url(#zinc)"/><circle cx="292" cy="200" r="26" fill="#3a4044"/></g>
      <g filter="url(#cast)"><path d="M292 200 L150 60" stroke="#7e868a" stroke-width="26" stroke-linecap="round"/><circle cx="140" cy="52" r="34" fill="#1a1c1e"/></g>`,
    focus: { x: 790, y: 540, r: 1000 },
  }
}
