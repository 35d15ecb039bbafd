using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Progression.Architecture.Tests;

/// <summary>The types that were written by hand in the assemblies of the program and the demo.</summary>
internal static class OurTypes
{
    private static readonly string[] Assemblies = ["Progression.Core", "Progression.Records", "Progression.Exchange", "Progression.SeedDemo", "progression"];

    public static ImmutableArray<Type> All { get; } = [.. Assemblies.SelectMany(name => Assembly.Load(name).GetTypes()).Where(type => !IsGenerated(type))];

    private static bool IsGenerated(Type type) =>
        type.FullName!.Contains('<', StringComparison.Ordinal) || type.IsDefined(typeof(CompilerGeneratedAttribute)) || !type.FullName.StartsWith("Progression.", StringComparison.Ordinal);
}
