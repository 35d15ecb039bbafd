using System.Diagnostics;
using Progression.Records.Clinic;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Clinic;

/// <summary>
/// A folder set up for a clinic, and people who come to it. Its groups are those that every Debian has: users shares the folder, the members of daemon
/// are therapists, of games supervisors, of staff leads.
/// </summary>
internal sealed class ClinicFolder : IDisposable
{
    public const string Own = """
        accounts: own
        group: users
        roles:
          therapist: [daemon]
          supervisor: [games]
          lead: [staff]
        """;

    public const string Sudo = """
        accounts: sudo
        roles:
          therapist: [daemon]
          supervisor: [games]
          lead: [staff]
        """;

    private const uint Users = 100;
    private readonly TempFolder _temp = new();

    /// <summary>A folder with a clinic.yaml.</summary>
    public static ClinicFolder With(string yaml)
    {
        Assert.SkipUnless(Environment.UserName == "root", "Only the superuser gives files away.");
        ClinicFolder clinic = new();
        Directory.CreateDirectory(clinic.Path);
        File.WriteAllText(clinic.Yaml, yaml);
        clinic.Do(yaml == Sudo
            ? "chmod 644 clinic.yaml; chown 4000:4000 .; chmod 700 ."
            : "chmod 644 clinic.yaml; chgrp users .; chmod 3770 .; touch plans.journal; chmod 660 plans.journal; mkdir drafts; chmod 3770 drafts");
        return clinic;
    }

    public string Path => _temp.File("plans");

    public string Yaml => System.IO.Path.Combine(Path, "clinic.yaml");

    /// <summary>A process of an account of the sharing group with other groups beside.</summary>
    public static ProcessFacts Somebody(params ReadOnlySpan<uint> groups) => Process(4711) with { Groups = [Users, .. groups] };

    public static ProcessFacts Process(uint user) => new() { RealUser = user, EffectiveUser = user, Groups = [user] };

    public ClinicAccess As(ProcessFacts process) => ClinicAccess.Of(Path, process);

    /// <summary>Runs shell commands in the folder, as an administrator would type them.</summary>
    public void Do(string commands)
    {
        using Process shell = System.Diagnostics.Process.Start(new ProcessStartInfo("sh", ["-ec", commands]) { WorkingDirectory = Path })!;
        shell.WaitForExit();
        Assert.Equal(0, shell.ExitCode);
    }

    public void Dispose() => _temp.Dispose();
}
