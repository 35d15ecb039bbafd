using BenchmarkDotNet.Attributes;
using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.Benchmarks;

/// <summary>What every start of the program waits for.</summary>
[MemoryDiagnoser]
public class LibraryBenchmarks
{
    /// <summary>A clinic's own folder laid over it; none.</summary>
    public string? ClinicFolder { get; set; }

    /// <summary>The shipped library, read and checked.</summary>
    [Benchmark]
    public ClinicalLibrary ReadShippedLibrary() => LibraryReader.Read(ClinicFolder).Library!;
}
