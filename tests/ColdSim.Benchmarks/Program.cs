using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

if (args is ["coverage"])
    return ColdSim.Benchmarks.Planning.FitCoverage.Run();
if (args is ["coverage", "two", .. string[] count])
    return ColdSim.Benchmarks.Planning.TwoCylinderCoverage.Run(count is [string logs] ? int.Parse(logs) : ColdSim.Benchmarks.Planning.TwoCylinderCoverage.Logs);
if (args is ["times"])
    return ColdSim.Benchmarks.Times.Run();

if (args is ["rows"])
    return ColdSim.Benchmarks.Files.TenMillionRows.Run();

if (args is ["layouts", .. string[] more])
    return ColdSim.Benchmarks.Files.LayoutRows.Run([.. more.Select(int.Parse)]);

if (args is ["chance"])
    return ColdSim.Benchmarks.Planning.ChanceFigures.Run();

if (args is ["figures"] or ["figures", "--write"])
    return ColdSim.Benchmarks.ShortFigures.Run(write: args.Length == 2);

if (args is ["growth", string plot])
    return ColdSim.Benchmarks.Growth.Run(plot);

if (args is ["accuracy", .. string[] scenarios])
    return ColdSim.Benchmarks.Accuracy.Run(scenarios);

if (args is ["beside", string rig])
    return ColdSim.Benchmarks.Beside.Run(rig);

// In this process: the project that BenchmarkDotNet would generate does not see references that are not handed on.
IConfig config = DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance).WithIterationCount(10));
BenchmarkSwitcher.FromAssembly(typeof(ColdSim.Benchmarks.ShortFigures).Assembly).Run(args, config);
return 0;
