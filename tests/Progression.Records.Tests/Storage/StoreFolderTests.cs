using System.Diagnostics;
using System.Runtime.Versioning;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

[SupportedOSPlatform("linux")]
public sealed class StoreFolderTests : IDisposable
{
    private const UnixFileMode ForTheGroup = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite;
    private readonly TempFolder _folder = new();

    [Fact]
    public async Task A_missing_folder_is_made_for_its_owner_alone_whatever_the_umask()
    {
        string folder = _folder.File("deep/plans");
        using Process writer = StoreDriver.StartBy(["sh", "-c", "umask 000; exec \"$@\"", "sh"], "append", folder, "K-1", "writer", "2");
        Assert.Equal(2, (await StoreDriver.Lines(writer, TestContext.Current.CancellationToken)).Length);

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(folder));
        string[] files = Directory.GetFiles(folder);
        Assert.Equal(
            ["plans.db", "plans.gate", "plans.journal", "plans.lock", "plans.mark"],
            files.Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(files, file => Assert.Equal(ForTheGroup, File.GetUnixFileMode(file)));
    }

    [Theory]
    [InlineData("plans.journal")]
    [InlineData("plans.db")]
    [InlineData("plans.mark")]
    [InlineData("plans.lock")]
    [InlineData("plans.gate")]
    public void A_file_that_is_a_symbolic_link_is_refused(string name)
    {
        string elsewhere = _folder.File("elsewhere");
        File.WriteAllText(elsewhere, "");
        string folder = Directory.CreateDirectory(_folder.File("plans")).FullName;
        File.CreateSymbolicLink(Path.Combine(folder, name), elsewhere);

        string why = RefusalIn(folder);

        Assert.Contains("symbolic link", why, StringComparison.Ordinal);
        Assert.Contains(name, why, StringComparison.Ordinal);
        Assert.Equal(0, new FileInfo(elsewhere).Length);
    }

    // The kernel's own tree refuses new files even to the superuser, as whom tests may run.
    [Fact]
    public void A_folder_that_may_not_be_written_is_refused_in_plain_words()
    {
        Assert.Contains("needs the right to write", RefusalIn("/sys/kernel"), StringComparison.Ordinal);
        Assert.Contains("cannot be made", RefusalIn("/sys/kernel/plans"), StringComparison.Ordinal);
        LiteDbPlanStore store = new(new StoreOptions("/sys/kernel", Sample.Fields));
        Assert.Equal(StoreFault.Refused, Assert.Throws<StoreException>(() => store.Load("K-1")).Fault);
    }

    [Fact]
    public void A_store_whose_folder_became_read_only_is_refused()
    {
        Assert.SkipWhen(Environment.UserName == "root", "The superuser may write anywhere.");
        File.SetUnixFileMode(_folder.Path, UnixFileMode.UserRead | UnixFileMode.UserExecute);

        Assert.Contains("needs the right to write", RefusalIn(_folder.Path), StringComparison.Ordinal);
        File.SetUnixFileMode(_folder.Path, ForTheGroup | UnixFileMode.UserExecute);
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_refused()
    {
        File.WriteAllText(_folder.File("plans"), "");

        Assert.Contains("cannot be made", RefusalIn(_folder.File("plans")), StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private static string RefusalIn(string folder) => Assert.IsType<AppendResult.Refused>(
        new LiteDbPlanStore(new StoreOptions(folder, Sample.Fields)).Append(Sample.Plan("K-1", null, "{}"))).Why;
}
