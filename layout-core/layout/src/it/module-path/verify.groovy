// The tests ran, on this path, and said how large.
def log = new File(basedir, 'build.log').text
if (!(log =~ /front placed at scale 2\.55\d* on the module-path/)
    || !log.contains('Tests run: 5, Failures: 0, Errors: 0, Skipped: 0')) {
  throw new IllegalStateException('the consumer on the module-path did not solve its sheet, see build.log')
}
