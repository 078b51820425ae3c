// Prints, for every model named on the command line, the torque each joint needs to hold the body still, as MuJoCo,
// compiled to WebAssembly, has it. Beside MODEL.xml lies MODEL.forces, six numbers a body (force, torque about its mass
// centre) in the order of the model.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

const [packages, ...models] = process.argv.slice(2);
const found = createRequire(packages + '/package.json').resolve('mujoco-js');
const mujoco = await (await import(pathToFileURL(found))).default();
for (const file of models) {
    mujoco.FS.writeFile('/model.xml', readFileSync(file, 'utf8'));
    const model = mujoco.MjModel.loadFromXML('/model.xml');
    const data = new mujoco.MjData(model);
    readFileSync(file.replace(/xml$/, 'forces'), 'utf8').trim().split(/\s+/).map(Number)
        .forEach((value, i) => { data.xfrc_applied[i] = value; });
    mujoco.mj_forward(model, data);
    // what the joints must hold: all smooth forces (weights and those under the feet) with their sign turned
    console.log(Array.from(data.qfrc_smooth, force => -force).join(' '));
    data.delete();
    model.delete();
}
