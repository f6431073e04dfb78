@echo off
rem Starts Placket on any JDK from 17 on: that of JAVA_HOME, or the java on the PATH. Options for Java go into
rem PLACKET_JAVA_OPTS and win over the ones below, as in PLACKET_JAVA_OPTS=-Xmx2g.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
set "LIB=%~dp0..\lib"
set "ARCHIVE="
if exist "%LIB%\placket.jsa" set ARCHIVE="-XX:SharedArchiveFile=%LIB%\placket.jsa"
if "%PLACKET_JAVA_OPTS%"=="-Xshare:dump" set ARCHIVE="-XX:SharedClassListFile=%LIB%\placket.classlist" "-XX:SharedArchiveFile=%LIB%\placket.jsa"
"%JAVA%" -Xshare:auto -Xlog:disable -XX:+UseSerialGC -XX:TieredStopAtLevel=1 %ARCHIVE% %PLACKET_JAVA_OPTS% -jar "%LIB%\@project.build.finalName@.jar" %*
exit /b %ERRORLEVEL%
