using System.Runtime.CompilerServices;
using ColdSim.App.Commands;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;

// The composition root: the one place that joins the commands to the process they run in.
using Host host = Host.OfProcess(Show);
return Dispatcher.RunAsync(args, host).GetAwaiter().GetResult();

// A method of its own, so that no screen code is loaded before a screen opens.
[MethodImpl(MethodImplOptions.NoInlining)]
static int Show(Opening opening, UnitStyle units, bool color) => ScreenProgram.Show(opening, units, color);
