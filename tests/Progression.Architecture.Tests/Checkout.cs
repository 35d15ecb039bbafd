using System.Collections.Immutable;

namespace Progression.Architecture.Tests;

/// <summary>The files of the checkout these tests were built in.</summary>
internal static class Checkout
{
    private static readonly string[] NotOurs = [".git", "artifacts", "bin", "obj", "TestResults"];
    private static readonly string[] Binary = [".png", ".gif", ".db", ".zip", ".pdf"];

    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    /// <summary>Every C# file of the sources, the demo and the tests.</summary>
    public static ImmutableArray<SourceFile> Code { get; } = [.. Texts().Where(path => path.EndsWith(".cs", StringComparison.Ordinal)).Select(path => new SourceFile(path, Read(path)))];

    /// <summary>C# files under a folder.</summary>
    public static IEnumerable<SourceFile> Under(params string[] folders) =>
        Code.Where(file => folders.Any(folder => file.Path.StartsWith(folder + "/", StringComparison.Ordinal)));

    /// <summary>The paths of all text files, from the root, with forward slashes.</summary>
    public static IEnumerable<string> Texts() => FilesOf(Root)
        .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
        .Where(path => path != ".git" && !Binary.Contains(Path.GetExtension(path)))
        .Order(StringComparer.Ordinal);

    public static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    private static IEnumerable<string> FilesOf(string folder) =>
        Directory.EnumerateFiles(folder).Concat(Directory.EnumerateDirectories(folder).Where(one => !NotOurs.Contains(Path.GetFileName(one))).SelectMany(FilesOf));

    private static string Find(DirectoryInfo? folder) =>
        folder is null ? throw new InvalidOperationException("These tests read the sources they were built from; run them inside the checkout.")
        : File.Exists(Path.Combine(folder.FullName, "Progression.sln")) ? folder.FullName
        : Find(folder.Parent);
}
