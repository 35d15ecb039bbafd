using System.Runtime.Versioning;
using Progression.Records.Clinic;

namespace Progression.Records.Tests.Clinic;

/// <summary>Set-ups that are refused, each with commands that mend it: they are run here as they are printed.</summary>
[SupportedOSPlatform("linux")]
public sealed class UnsafeFolderTests
{
    [Theory]
    [InlineData("chmod 3777 .", "has mode 3777")]
    [InlineData("chmod 3775 .", "has mode 3775")]
    [InlineData("chmod g-s .", "has mode 1770")]
    [InlineData("chmod 01770 .; chmod g-s,-t .", "has mode 0770")]
    [InlineData("chgrp daemon .", "has the group daemon")]
    [InlineData("chown bin .", "belongs to the account bin")]
    [InlineData("chmod 666 plans.journal", "plans.journal has mode 0666")]
    [InlineData("chmod 600 plans.journal", "plans.journal has mode 0600")]
    [InlineData("chgrp daemon plans.journal", "plans.journal has the group daemon")]
    [InlineData("ln -s /etc/passwd plans.db", "plans.db is a symbolic link", "rm")]
    [InlineData("mkdir plans.db", "plans.db is not an ordinary file", "rm -r")]
    [InlineData("ln plans.journal copy", "plans.journal has 2 names", null)]
    [InlineData("chmod 3777 drafts", "mode 3777")]
    [InlineData("chmod 2770 drafts", "mode 2770")]
    [InlineData("touch drafts/x; chmod 640 drafts/x; chown 4711 drafts/x", "drafts/x is not for its owner alone")]
    [InlineData("chmod 664 clinic.yaml", "clinic.yaml has mode 0664", "chmod")]
    [InlineData("chown bin clinic.yaml", "clinic.yaml belongs to the account bin", "chown")]
    [InlineData("mv clinic.yaml real; ln -s real clinic.yaml", "clinic.yaml is a symbolic link", null)]
    [InlineData("rm clinic.yaml; mkfifo clinic.yaml", "clinic.yaml is not an ordinary file", null)]
    [InlineData("chmod 600 clinic.yaml; chown root clinic.yaml; rm clinic.yaml", "and no clinic.yaml", null)]
    [InlineData("chmod 777 ..", "Everybody may change the folder")]
    [InlineData("chgrp users ..; chmod 770 ..", "The group users may change the folder")]
    [InlineData("chown bin ..", "belongs to the account bin")]
    public void What_is_unsafe_is_refused_and_its_cure_cures(string harm, string found, string? cure = "")
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Own);
        clinic.Do(harm);

        ClinicAccess access = clinic.As(ClinicFolder.Somebody(1));

        Assert.False(access.IsGood);
        Condition wrong = access.Problems.First(problem => problem.Found!.Contains(found, StringComparison.Ordinal));
        Assert.NotEmpty(wrong.Cure);
        if (cure is not null)
        {
            clinic.Do(wrong.Cure[wrong.Cure.IndexOf(cure, StringComparison.Ordinal)..]);
            Assert.True(clinic.As(ClinicFolder.Somebody(1)).IsGood, clinic.As(ClinicFolder.Somebody(1)).Refusal);
        }
    }

    [Theory]
    [InlineData("chmod 750 .", "has mode 0750")]
    [InlineData("touch plans.db; chown bin plans.db", "plans.db belongs to the account bin")]
    [InlineData("chown root .", "belongs to root", null)]
    public void The_same_for_the_records_account(string harm, string found, string? cure = "")
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Sudo);
        ProcessFacts daemon = ClinicFolder.Process(4000) with { SudoUser = "1" };
        Assert.True(clinic.As(daemon).IsGood, clinic.As(daemon).Refusal);
        clinic.Do(harm);

        Condition wrong = clinic.As(daemon).Problems.First();

        Assert.Contains(found, wrong.Found, StringComparison.Ordinal);
        if (cure is not null)
        {
            clinic.Do(wrong.Cure);
            Assert.True(clinic.As(daemon).IsGood, clinic.As(daemon).Refusal);
        }
    }

    [Theory]
    [InlineData("chmod 755 .", "has mode 0755 and no clinic.yaml")]
    [InlineData("chmod 770 .", "has mode 0770 and no clinic.yaml")]
    [InlineData("chown bin .", "belongs to the account bin")]
    public void A_folder_that_others_enter_is_not_opened_without_a_clinics_file(string harm, string found)
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Own);
        clinic.Do($"rm clinic.yaml; chmod 00700 .; {harm}");

        Assert.Contains(found, clinic.As(ClinicFolder.Process(0)).Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_on_the_way_is_followed_when_it_is_roots_and_refused_when_it_is_somebody_elses()
    {
        using ClinicFolder clinic = ClinicFolder.With(ClinicFolder.Own);
        string link = Path.Combine(Path.GetDirectoryName(clinic.Path)!, "link");
        clinic.Do("ln -s plans ../link");
        Assert.True(ClinicAccess.Of(link, ClinicFolder.Somebody(1)).IsGood);
        Assert.True(ClinicAccess.Of(Path.Combine(link, "..", "plans"), ClinicFolder.Somebody(1)).IsGood);

        clinic.Do("chown -h bin ../link");
        Assert.Contains("a symbolic link of the account bin", ClinicAccess.Of(link, ClinicFolder.Somebody(1)).Refusal, StringComparison.Ordinal);
    }

    // Numbers from the manual page statfs(2) and, for SMB2 and the shared folder, linux/magic.h and the kernel's vboxsf; ext4 and tmpfs as contrast.
    [Theory]
    [InlineData(0x6969, "NFS")]
    [InlineData(0xFF534D42, "CIFS")]
    [InlineData(0xFE534D42, "SMB2")]
    [InlineData(0x517B, "SMB")]
    [InlineData(0x01021997, "9P")]
    [InlineData(0x65735546, "FUSE")]
    [InlineData(0x5346414F, "AFS")]
    [InlineData(0x00C36400, "Ceph")]
    [InlineData(0x73757245, "Coda")]
    [InlineData(0x564C, "NCP")]
    [InlineData(0xEF53, null)]
    [InlineData(0x01021994, null)]
    public void Disks_of_other_machines_are_told_by_name(long number, string? name) => Assert.Equal(name, DiskKind.Unsafe(number));

    [Fact]
    public void A_disk_of_this_machine_is_taken_and_the_number_is_the_systems_own() => Assert.Null(DiskKind.UnsafeAt("/proc"));
}
