using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Progression.Benchmarks;

// "false-advance" prints how often a step is taken that the truth does not carry: formula beside simulation.
if (args is ["false-advance"])
{
    FalseAdvanceTable.Print(Console.Out);
    return 0;
}

// "calibrate [N]" prints how honest forecasts are, on N invented knees a row.
if (args is ["calibrate", ..])
{
    Calibration.Print(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 2000, Console.Out);
    return 0;
}

// "make-caseload N FOLDER" fills an empty folder with N invented cases; "open-caseload FOLDER" tells what a list of them costs.
if (args is ["make-caseload", var count, var target])
{
    CaseloadMaker.Make(int.Parse(count, CultureInfo.InvariantCulture), target, Console.Out);
    return 0;
}

if (args is ["open-caseload", var store])
{
    CaseloadTimes.Print(store, Console.Out);
    return 0;
}

// "store-times FOLDER" tells what the calls on such a store cost; "store-ratios" sets saving and the queue beside the least that could do the same.
if (args is ["store-times", var records])
{
    StoreTimes.Print(records, Console.Out);
    return 0;
}

if (args is ["store-ratios"])
{
    StoreRatios.Print(Console.Out);
    return 0;
}

// "--smoke" runs every benchmark once, to see that all of them still run; its times mean nothing. Other options go to the runner.
bool smoke = args.Contains("--smoke");
if (smoke)
{
    Calibration.Print(100, Console.Out);
    StoreRatios.Print(Console.Out);
}

string[] options = smoke ? ["--filter", "*"] : args.Length == 0 ? ["--filter", "*"] : args;

// Measured inside this process: nothing is generated, built or restored, and nothing is written beside the sources.
Job job = (smoke ? Job.Dry : Job.Default.WithWarmupCount(8).WithIterationCount(10)).WithToolchain(InProcessEmitToolchain.Instance);
ManualConfig config = ManualConfig.Create(DefaultConfig.Instance)
    .AddJob(job)
    .AddColumn(StatisticColumn.Min)
    .HideColumns(Column.Job, Column.Toolchain)
    .WithArtifactsPath(Path.Combine(AppContext.BaseDirectory, "results"))
    .WithOptions(smoke ? ConfigOptions.DisableOptimizationsValidator : ConfigOptions.Default);

List<Summary> summaries = [.. BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(options, config)];
return summaries.Count > 0 && summaries.All(summary => !summary.HasCriticalValidationErrors && summary.Reports.All(report => report.Success)) ? 0 : 1;
