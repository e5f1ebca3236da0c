using ColdSim.App;
using ColdSim.App.Commands;

using Host host = Host.OfProcess(Joined.Parts());
return await CommandLine.RunAsync(args, host).ConfigureAwait(false);
